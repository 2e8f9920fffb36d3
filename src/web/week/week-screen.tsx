// The screen on which an adult plans a week, for one child or several, moves its sheets about and prints them.
import { Button } from 'react-aria-components/Button';
import { addDays } from '../../plan/index.ts';
import type { Child, View } from '../../records/index.ts';
import { ChildChooser } from '../children/child-chooser.tsx';
import { Message } from '../children/message.tsx';
import { RecordsMain } from '../children/records-main.tsx';
import { useGround } from '../children/use-ground.ts';
import { useToday } from '../children/use-today.ts';
import '../look/week.css';
import '../look/plan-print.css';
import { openOf } from '../planning/planned.ts';
import type { Planner } from '../planning/planner.ts';
import type { ScreenProps } from '../screen-props.ts';
import { useStock } from '../supplies/use-stock.ts';
import { words as shell } from '../words.ts';
import { Calendar } from './calendar.tsx';
import { OnPaper } from './on-paper.tsx';
import { PlanButtons } from './plan-buttons.tsx';
import type { KeepingState } from './use-keeping.ts';
import { type Plans, usePlans } from './use-plans.ts';
import { useWeek, type WeekInView } from './use-week.ts';
import { Wanted } from './wanted.tsx';
import { DAYS_A_WEEK, weekToPlan } from './week-days.ts';
import { words } from './words.ts';

export default function WeekScreen({ planner }: ScreenProps) {
  return (
    <RecordsMain className="week">{(view) => <Desk planner={planner} view={view} />}</RecordsMain>
  );
}

interface DeskProps {
  readonly planner: Planner;
  readonly view: View;
}

function Desk(props: DeskProps) {
  const { child } = useGround();
  return child === undefined ? (
    <ChildChooser about={words.firstVisit} />
  ) : (
    <Week {...props} child={child} />
  );
}

function Week({ planner, view, child }: DeskProps & { readonly child: Child }) {
  const week = useWeek(view, child, useToday());
  const { entries, shelf } = useGround();
  const stock = useStock(planner, entries, shelf)?.stock?.left;
  const plans = usePlans(planner, week);
  const { chosen, columns } = week;
  // A plan that is kept and not read yet is no missing plan.
  const isAwaited = week.planned.some(({ id }) => !plans.cards.has(id));
  const hasSheets = isAwaited || chosen.some(({ id }) => hasAny(plans, id, week));
  const isNext = !isAwaited && !chosen.some(({ id }) => hasAny(plans, id, week, week.today));
  return (
    <>
      <WeekBar week={week} />
      <Wanted
        week={week}
        isCounted={view.stock !== undefined}
        isPlanned={week.lacking.length === 0 && chosen.length > 0}
      >
        {isNext ? null : <PlanButtons week={week} plans={plans} isNext={false} />}
      </Wanted>
      {isNext ? <PlanButtons week={week} plans={plans} isNext /> : null}
      {isNext || plans.cards.size === 0 ? null : (
        <OnPaper
          week={week}
          cards={plans.cards}
          isWhole={!isAwaited}
          planner={planner}
          stock={stock}
        />
      )}
      {hasSheets ? (
        <Calendar
          chosen={chosen}
          columns={columns}
          today={week.today}
          cards={plans.cards}
          change={plans.change}
        />
      ) : (
        <p className="empty">{words.notPlannedYet}</p>
      )}
      <Kept keeping={plans.keeping} />
    </>
  );
}

/** Whether a child has sheets in the columns, or sheets that are not done from a day on. */
function hasAny({ cards }: Plans, child: string, { columns }: WeekInView, from?: string): boolean {
  const days = (cards.get(child) ?? []).filter(({ day }) => columns.includes(day));
  return days.some((day) =>
    from === undefined ? day.sheets.length > 0 : day.day >= from && openOf(day).length > 0,
  );
}

function WeekBar({ week }: { readonly week: WeekInView }) {
  const { monday, turnTo, weekWishes } = week;
  const now = weekToPlan(week.today, weekWishes.weekdays);
  return (
    <div className="week-bar">
      <Button
        className="quiet turn"
        aria-label={words.before}
        onPress={() => turnTo(addDays(monday, -DAYS_A_WEEK))}
      >
        ‹
      </Button>
      <h2 className="record-title" aria-live="polite">
        {words.weekOf(monday)}
      </h2>
      <Button
        className="quiet turn"
        aria-label={words.after}
        onPress={() => turnTo(addDays(monday, DAYS_A_WEEK))}
      >
        ›
      </Button>
      {monday === now ? null : (
        <Button className="quiet" onPress={() => turnTo(now)}>
          {words.backToNow}
        </Button>
      )}
    </div>
  );
}

/** What was kept and can be taken back, or what could not be kept. */
function Kept({ keeping }: { readonly keeping: KeepingState }) {
  const { said, undo, unkept, keep } = keeping;
  return (
    <div className="kept">
      {unkept === undefined ? (
        <Message said={said} undo={undo} />
      ) : (
        <div className="fault message" role="alert">
          <p>{words.notKept(unkept.objection)}</p>
          <Button className="plain" onPress={() => void keep([], unkept.text)}>
            {shell.tryAgain}
          </Button>
        </div>
      )}
    </div>
  );
}
