// What is recorded of the child, the newest first, each with a way to take it back.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Child, ResultInView } from '../../records/index.ts';
import { words as common } from '../children/words.ts';
import type { Maker } from '../making/maker.ts';
import type { Catalogue } from '../making/protocol.ts';
import { capital } from '../words.ts';
import { useSheetNames } from './sheet-names.ts';
import { words } from './words.ts';

export interface ResultListProps {
  readonly maker: Maker;
  readonly catalogue: Catalogue | undefined;
  readonly child: Child;
  readonly results: readonly ResultInView[];
  readonly onUndo: (result: ResultInView) => void;
}

/** How many are shown at first, and how many more at each asking. */
const AT_ONCE = 20;

export function ResultList({ maker, catalogue, child, results, onUndo }: ResultListProps) {
  const [shownCount, setShownCount] = useState(AT_ONCE);
  const shown = [...results].reverse().slice(0, shownCount);
  const nameOfSheet = useSheetNames(
    maker,
    catalogue,
    shown.map(({ code }) => code),
  );
  return (
    <section className="results" aria-label={words.results(child.nickname)}>
      <h2 className="record-title">{words.results(child.nickname)}</h2>
      {results.length === 0 ? <p className="empty">{words.noResults}</p> : null}
      <ol className="entries">
        {shown.map((result) => (
          <Item
            key={result.id}
            result={result}
            sheet={nameOfSheet(result.code)}
            onUndo={() => onUndo(result)}
          />
        ))}
      </ol>
      {results.length > shownCount ? (
        <Button className="quiet outward" onPress={() => setShownCount(shownCount + AT_ONCE)}>
          {words.earlier}
        </Button>
      ) : null}
    </section>
  );
}

interface ItemProps {
  readonly result: ResultInView;
  readonly sheet: string;
  readonly onUndo: () => void;
}

function Item({ result, sheet, onUndo }: ItemProps) {
  const day = words.longDay(result.day);
  return (
    <li className="entry">
      <div className="entry-words">
        <p className="entry-day">{day}</p>
        <p className="entry-sheet">{capital(sheet)}</p>
        <p>{words.inCounts(result.tasks)}</p>
        <Besides result={result} />
        {result.alsoRecorded.length > 0 ? <p className="help">{words.alsoRecorded}</p> : null}
      </div>
      <Button className="quiet" aria-label={words.undoOf(`${sheet}, ${day}`)} onPress={onUndo}>
        {common.undo}
      </Button>
    </li>
  );
}

function Besides({ result }: { readonly result: ResultInView }) {
  const { tasks, help, mood, minutes, note } = result;
  const instead = tasks.flatMap((task, index) =>
    (task.instead ?? []).flatMap(({ label }) =>
      label === undefined ? [] : [words.insteadOf(index + 1, label)],
    ),
  );
  const parts = [
    ...instead,
    ...(help === undefined ? [] : [words.helpWas(help)]),
    ...(mood === undefined ? [] : [words.moodWas(mood)]),
    ...(minutes === undefined ? [] : [words.minutesWere(minutes)]),
  ];
  return (
    <>
      {parts.length > 0 ? <p className="help">{words.beside(parts)}</p> : null}
      {note === undefined ? null : <p className="entry-note">{note}</p>}
    </>
  );
}
