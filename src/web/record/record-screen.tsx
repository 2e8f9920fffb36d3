// The screen on which an adult keeps the records of children: who they are, what they did, and the backup.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Child, Id, ResultEntry, View } from '../../records/index.ts';
import '../look/record.css';
import type { Maker } from '../making/maker.ts';
import type { Catalogue } from '../making/protocol.ts';
import { askToKeep } from '../store/keeping.ts';
import { Backup } from './backup.tsx';
import { Children } from './children.tsx';
import { Message, type Said } from './message.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { ResultList } from './result-list.tsx';
import { objectionOf, type Records, store, useRecords } from './use-records.ts';
import { words } from './words.ts';

export interface RecordScreenProps {
  readonly maker: Maker;
  /** Absent until the maker has told it. */
  readonly catalogue: Catalogue | undefined;
}

export default function RecordScreen(props: RecordScreenProps) {
  const records = useRecords();
  return (
    <main className="record">
      {records.objection === '' ? null : (
        <div className="fault" role="alert">
          <p>{records.objection}</p>
          <Button className="plain" onPress={() => void records.read()}>
            {words.tryAgain}
          </Button>
        </div>
      )}
      {records.view === undefined ? (
        <p aria-busy="true">{records.objection === '' ? words.loading : ''}</p>
      ) : (
        <Desk {...props} records={records} view={records.view} />
      )}
    </main>
  );
}

interface DeskProps extends RecordScreenProps {
  readonly records: Records;
  readonly view: View;
}

function Desk({ maker, catalogue, records, view }: DeskProps) {
  const [chosen, setChosen] = useState<Id>();
  const [said, setSaid] = useState<Said>();
  const child = view.children.find(({ id }) => id === chosen) ?? lastRecorded(view);
  const results = (child && view.results.get(child.id)) ?? [];
  const undo = async (entry: Id, isTakenBack = false) =>
    setSaid(await takenBack(entry, isTakenBack));
  const chooseChild = (id: Id) => {
    setChosen(id);
    setSaid(undefined);
  };
  const savedChild = (id: Id, nickname: string) => {
    setChosen(id);
    setSaid({ text: words.savedChild(nickname) });
    // Now there is something to keep; a browser that asks the person does so here.
    if (records.keeping !== 'kept') void askToKeep().then(records.setKeeping);
  };
  const saved = ({ id, tasks }: ResultEntry, sheet: string) =>
    setSaid({ text: words.savedResult(child?.nickname ?? '', sheet, tasks), undo: id });
  return (
    <>
      <Children
        view={view}
        child={child}
        onChoose={chooseChild}
        onSaved={savedChild}
        onDeleted={(nickname) => setSaid({ text: words.deleted(nickname) })}
      />
      <Message
        said={said}
        onUndo={({ undo: entry, isTakenBack }) => entry && void undo(entry, isTakenBack)}
      />
      {child === undefined ? null : (
        <>
          <RecordSheet maker={maker} catalogue={catalogue} child={child} onSaved={saved} />
          <ResultList
            key={child.id}
            maker={maker}
            catalogue={catalogue}
            child={child}
            results={results}
            onUndo={({ id }) => void undo(id)}
          />
        </>
      )}
      <Backup entries={records.entries ?? []} keeping={records.keeping} />
    </>
  );
}

/** The child of the latest record, else the first. */
function lastRecorded({ children, results }: View): Child | undefined {
  const latest = ({ id }: Child): Id =>
    results
      .get(id)
      ?.map((result) => result.id)
      .sort()
      .at(-1) ?? '';
  return children.reduce<Child | undefined>(
    (best, child) => (best === undefined || latest(child) > latest(best) ? child : best),
    undefined,
  );
}

/** Takes an entry back, or the taking back of one, and says so; that can be taken back in turn. */
async function takenBack(entry: Id, wasTakenBack: boolean): Promise<Said> {
  const undone = await store.append([{ kind: 'undone', entry }]);
  if (!undone.ok) return { text: objectionOf(undone) };
  const [added] = undone.value;
  return {
    text: wasTakenBack ? words.broughtBack : words.takenBack,
    ...(added === undefined ? {} : { undo: added.id }),
    isTakenBack: !wasTakenBack,
  };
}
