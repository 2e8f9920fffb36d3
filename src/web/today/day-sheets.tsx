// The day at a glance: whose, how long, and its sheets in order, each with what was last said of it.
import type { Day } from '../../records/index.ts';
import { Message } from '../children/message.tsx';
import type { DayCards, PlanWishes, SheetCard } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';
import { Paper } from '../table/paper.tsx';
import { capital } from '../words.ts';
import { DaySheet } from './day-sheet.tsx';
import type { DayChanges } from './use-day-changes.ts';
import { SHEET_CHANGES, type SheetChange, words } from './words.ts';

export interface DayHeadProps {
  /** The nickname of the child. */
  readonly child: string;
  readonly day: Day;
  readonly cards: DayCards | undefined;
}

export function DayHead({ child, day, cards }: DayHeadProps) {
  const sum = cards === undefined ? words.looking(child) : words.sum(cards.sheets);
  return (
    <div className="day-head">
      <p className="today-date">{capital(words.longDay(day))}</p>
      <h2 className="day-title">{words.today(child)}</h2>
      <p className="day-sum" role="status">
        {sum}
      </p>
    </div>
  );
}

export interface DaySheetsProps extends Omit<DayHeadProps, 'day'> {
  readonly planner: Planner;
  readonly wishes: PlanWishes;
  readonly changes: DayChanges;
}

export function DaySheets({ planner, child, cards, wishes, changes }: DaySheetsProps) {
  if (cards === undefined) return <Blank />;
  const { busy, saidAt, placeOf, change } = changes;
  const { sheets, isKept } = cards;
  const message = <Message said={changes.said} undo={changes.undo} />;
  const isSaidInList = sheets.some(({ code }) => placeOf(code) === saidAt);
  return (
    <>
      {isSaidInList ? null : message}
      {sheets.length === 0 ? (
        <p className="empty">{isKept ? words.nothingLeft : words.nothingSuits(child, wishes)}</p>
      ) : (
        <ol className="day-sheets" aria-label={words.sheets}>
          {sheets.map((card, index) => (
            <DaySheet
              key={placeOf(card.code)}
              planner={planner}
              card={card}
              child={child}
              isBusy={busy === placeOf(card.code)}
              without={notNow(sheets, index, busy !== undefined)}
              onChange={(how) => void change(card, how)}
            >
              {saidAt === placeOf(card.code) ? message : null}
            </DaySheet>
          ))}
        </ol>
      )}
    </>
  );
}

/** Two changes at once would undo each other; the ends of the day have no earlier or later. */
function notNow(
  { length }: readonly SheetCard[],
  index: number,
  isBusy: boolean,
): readonly SheetChange[] {
  if (isBusy) return SHEET_CHANGES;
  return [
    ...(index === 0 ? (['earlier'] as const) : []),
    ...(index === length - 1 ? (['later'] as const) : []),
  ];
}

/** Blank papers keep the places of the sheets. */
function Blank() {
  return (
    <div className="day-sheets" aria-hidden="true">
      {['first', 'second', 'third'].map((place) => (
        <div key={place} className="day-sheet">
          <div className="day-paper">
            <Paper shown={undefined} isMaking />
          </div>
        </div>
      ))}
    </div>
  );
}
