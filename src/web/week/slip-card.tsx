// What is behind a slip: why the sheet is in the plan, what to lay out, and where it may go.
import { Button } from 'react-aria-components/Button';
import { Heading } from 'react-aria-components/Heading';
import { openOf } from '../planning/planned.ts';
import { words as planning } from '../planning/words.ts';
import { capital } from '../words.ts';
import type { Change } from './moves.ts';
import type { SheetInRow } from './row.ts';
import { words } from './words.ts';

export interface SlipCardProps extends SheetInRow {
  readonly close: () => void;
}

export function SlipCard(props: SlipCardProps) {
  const { row, sheet } = props;
  const { name, step, steps, content, tasks, materials, code, isDone } = sheet;
  return (
    <>
      <Heading slot="title" className="drawer-title">
        {capital(name)}
      </Heading>
      <p>{planning.whySentence(sheet, row.nickname)}</p>
      <p className="help">
        {words.facts(step, steps, content, tasks)} {words.layOut(planning.layOut(materials))}
      </p>
      <p className="help">
        {words.code} <span className="code">{code}</span>
      </p>
      {isDone ? null : <Moves {...props} />}
    </>
  );
}

function Moves({ row, day, sheet, close }: SlipCardProps) {
  const { code } = sheet;
  const from = day.day;
  const isPast = from < row.today;
  const change = (what: Change) => {
    close();
    row.change(what);
  };
  const others = row.days.filter((each) => each.day >= row.today && each.day !== from);
  const open = openOf(day);
  const place = open.findIndex((each) => each.code === code);
  return (
    <>
      {others.length === 0 ? null : (
        <div className="field">
          <span className="field-label" aria-hidden="true">
            {words.moveTo}
          </span>
          <div className="chips">
            {others.map(({ day: to }) => (
              <Button
                key={to}
                className="chip"
                aria-label={words.moveToDay(to, row.today)}
                onPress={() => change({ kind: 'move', code, from, to })}
              >
                {words.dayShort(to, row.today)}
              </Button>
            ))}
          </div>
        </div>
      )}
      {isPast ? null : (
        <div className="field">
          <span className="field-label" aria-hidden="true">
            {words.onTheDay}
          </span>
          <div className="chips">
            <Button
              className="chip"
              isDisabled={place === 0}
              onPress={() => change({ kind: 'move', code, from, to: from, place: place - 1 })}
            >
              {words.earlier}
            </Button>
            <Button
              className="chip"
              isDisabled={place === open.length - 1}
              onPress={() => change({ kind: 'move', code, from, to: from, place: place + 1 })}
            >
              {words.later}
            </Button>
            <Button className="chip" onPress={() => change({ kind: 'take-out', code, from })}>
              {words.takeOut}
            </Button>
          </div>
        </div>
      )}
    </>
  );
}
