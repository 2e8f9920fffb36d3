// One sheet in the plan, as a slip of paper: what it is, how it stands, and more behind its name.
import { Button } from 'react-aria-components/Button';
import { Dialog, DialogTrigger } from 'react-aria-components/Dialog';
import { Popover } from 'react-aria-components/Popover';
import type { SheetCard } from '../planning/cards.ts';
import { capital } from '../words.ts';
import { type PlannedDay, sheetKey } from './moves.ts';
import type { Row } from './row.ts';
import { SlipCard } from './slip-card.tsx';
import { words } from './words.ts';

export interface SlipProps {
  readonly row: Row;
  readonly day: PlannedDay;
  readonly sheet: SheetCard;
}

export function Slip({ row, day, sheet }: SlipProps) {
  const { name, step, content, minutes, code } = sheet;
  const isTwice = row.twice.has(sheetKey(day.day, code));
  return (
    <div className="slip-face">
      <DialogTrigger>
        <Button className="slip-name" aria-label={words.more(capital(name), day.day)}>
          {capital(name)}
        </Button>
        <Popover className="drawer" placement="bottom start">
          <Dialog className="question slip-card">
            {({ close }) => <SlipCard row={row} day={day} sheet={sheet} close={close} />}
          </Dialog>
        </Popover>
      </DialogTrigger>
      <p className="slip-facts">{words.sheet(step, content, minutes)}</p>
      {isTwice ? <p className="slip-note">{words.twice}</p> : null}
    </div>
  );
}

/** A sheet that has its place for good: it is done, or its day is over. */
export function LyingSlip({ row, day, sheet }: SlipProps) {
  const { isDone, code, movesOnTo } = sheet;
  const { today, change } = row;
  return (
    <li className="slip" data-state={isDone ? 'done' : 'not-done'}>
      <Slip row={row} day={day} sheet={sheet} />
      <p className="slip-state">{isDone ? words.done : words.notDone}</p>
      {isDone || movesOnTo === undefined ? null : (
        <p className="slip-note">{words.movesOn(movesOnTo, today)}</p>
      )}
      {isDone || movesOnTo !== undefined ? null : (
        <Button
          className="slip-do"
          onPress={() => change({ kind: 'move', code, from: day.day, to: today })}
        >
          {words.moveToToday}
        </Button>
      )}
    </li>
  );
}
