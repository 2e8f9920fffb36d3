// The week as a wall calendar: children as rows and days as columns where there is room, else one child's days in turn.
import { type CSSProperties, memo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Child, Day, Id } from '../../records/index.ts';
import { ChoiceControl } from '../sentence/choice-control.tsx';
import { useLatestCall } from '../use-latest-call.ts';
import { capital } from '../words.ts';
import { DaySlips } from './day-slips.tsx';
import type { Change } from './moves.ts';
import type { CardsByChild } from './use-cards.ts';
import { type RowProps, useRow } from './use-row.ts';
import { useWide } from './use-wide.ts';
import { words } from './words.ts';

/** With more children the calendar scrolls inside, so that its head stays in view (our own choice). */
const MOST_IN_FULL = 2;

export interface CalendarProps {
  readonly chosen: readonly Child[];
  readonly columns: readonly Day[];
  readonly today: Day;
  readonly cards: CardsByChild;
  readonly change: (child: Id, change: Change) => Promise<void>;
}

export function Calendar({ change: changeNow, ...props }: CalendarProps) {
  // Always the same, so that rows are drawn anew only for what changed in them.
  const change = useLatestCall((child: Id, what: Change) => void changeNow(child, what));
  const [wanted, setWanted] = useState<Id>();
  return useWide() ? (
    <Table {...props} change={change} />
  ) : (
    <Stack {...props} change={change} wanted={wanted} setWanted={setWanted} />
  );
}

interface TableProps extends Omit<CalendarProps, 'change'>, Pick<RowProps, 'change'> {}

function Table({ chosen, columns, today, cards, change }: TableProps) {
  return (
    <section
      className="calendar"
      aria-label={words.calendar}
      data-many={chosen.length > MOST_IN_FULL ? 'yes' : 'no'}
    >
      <table style={{ '--days': columns.length } as CSSProperties}>
        <thead>
          <tr>
            <th scope="col" className="child-name">
              {words.child}
            </th>
            {columns.map((day) => (
              <th
                key={day}
                scope="col"
                className="day"
                aria-current={day === today ? 'date' : undefined}
              >
                <DayName day={day} today={today} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {chosen.map(({ id, nickname }) => (
            <TableRow
              key={id}
              id={id}
              nickname={nickname}
              days={cards.get(id)}
              columns={columns}
              today={today}
              change={change}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function DayName({ day, today }: { readonly day: Day; readonly today: Day }) {
  return (
    <>
      <span className="day-name">{capital(words.weekday(day))}</span>
      <span className="day-date">
        {words.date(day)}
        {day === today ? <b>{words.todayMarked}</b> : null}
      </span>
    </>
  );
}

const TableRow = memo(function TableRow(props: RowProps) {
  const row = useRow(props);
  return (
    <tr>
      <th scope="row" className="child-name">
        {props.nickname}
      </th>
      {row === undefined ? (
        <td className="day" colSpan={props.columns.length} aria-busy="true">
          {words.reading}
        </td>
      ) : (
        props.columns.map((day) => (
          <td key={day} className="day">
            <DaySlips row={row} day={day} />
          </td>
        ))
      )}
    </tr>
  );
});

interface StackProps extends TableProps {
  /** The child that was turned to; absent: none yet. */
  readonly wanted: Id | undefined;
  readonly setWanted: (child: Id | undefined) => void;
}

/** One child at a time, its days under one another. */
function Stack({ chosen, columns, today, cards, change, wanted, setWanted }: StackProps) {
  const place = Math.max(
    0,
    chosen.findIndex(({ id }) => id === wanted),
  );
  const child = chosen[place];
  if (child === undefined) return null;
  const turn = (to: number) => setWanted(chosen[to]?.id);
  return (
    <section className="day-stack" aria-label={words.calendar}>
      {chosen.length < 2 ? null : (
        <div className="pager">
          <Button
            className="quiet turn"
            aria-label={words.childBefore}
            isDisabled={place === 0}
            onPress={() => turn(place - 1)}
          >
            ‹
          </Button>
          <ChoiceControl
            label={words.child}
            value={child.id}
            choices={chosen.map(({ id, nickname }) => ({ value: id, name: nickname }))}
            objection={undefined}
            onChange={setWanted}
          />
          <Button
            className="quiet turn"
            aria-label={words.childAfter}
            isDisabled={place === chosen.length - 1}
            onPress={() => turn(place + 1)}
          >
            ›
          </Button>
        </div>
      )}
      <StackOfDays
        key={child.id}
        id={child.id}
        nickname={child.nickname}
        days={cards.get(child.id)}
        columns={columns}
        today={today}
        change={change}
      />
    </section>
  );
}

function StackOfDays(props: RowProps) {
  const row = useRow(props);
  if (row === undefined) return <p aria-busy="true">{words.reading}</p>;
  return props.columns.map((day) => (
    <section key={day} className="stacked-day" aria-label={words.longDay(day)}>
      <h3 className="stacked-day-name" aria-current={day === props.today ? 'date' : undefined}>
        <DayName day={day} today={props.today} />
      </h3>
      <DaySlips row={row} day={day} />
    </section>
  ));
}
