// The screen that says what to do with a child today: a few sheets on the table, each with its reason.
import type { Day as CalendarDay, Child, Entry, View } from '../../records/index.ts';
import { ChildChooser } from '../children/child-chooser.tsx';
import { RecordsMain } from '../children/records-main.tsx';
import { useGround } from '../children/use-ground.ts';
import { useToday } from '../children/use-today.ts';
import '../look/today.css';
import '../look/plan-print.css';
import type { Planner } from '../planning/planner.ts';
import { usePlanWishes } from '../planning/wishes.ts';
import type { ScreenProps } from '../screen-props.ts';
import { isPlanOf } from './day-changes.ts';
import { DayDesk } from './day-desk.tsx';
import { DayHead, DaySheets } from './day-sheets.tsx';
import { useDay } from './use-day.ts';
import { useDayChanges } from './use-day-changes.ts';
import { words } from './words.ts';

export default function TodayScreen({ planner }: ScreenProps) {
  return (
    <RecordsMain className="today">
      {(view) => <WhoseDay planner={planner} view={view} />}
    </RecordsMain>
  );
}

function WhoseDay({ planner, view }: { readonly planner: Planner; readonly view: View }) {
  const { child } = useGround();
  const day = useToday();
  return (
    <>
      <ChildChooser about={words.firstVisit} />
      {child === undefined ? null : (
        <Day key={`${child.id} ${day}`} planner={planner} view={view} child={child} day={day} />
      )}
    </>
  );
}

interface DayProps {
  readonly planner: Planner;
  readonly view: View;
  readonly child: Child;
  readonly day: CalendarDay;
}

const NONE: readonly Entry[] = [];

function Day({ planner, view, child, day }: DayProps) {
  const { entries = NONE, shelf } = useGround();
  const [wishes, setWishes] = usePlanWishes();
  const asked = { entries, shelf, child: child.id, day, wishes };
  const { cards, objection, isPlanning } = useDay(planner, asked);
  const plans = view.plans.get(child.id);
  const changes = useDayChanges(planner, asked, cards, plans);
  const { nickname } = child;
  return (
    <>
      <section className="today-day" aria-label={words.today(nickname)} aria-busy={isPlanning}>
        <DayHead child={nickname} day={day} cards={cards} />
        {objection === '' ? null : (
          <p className="fault" role="alert">
            {objection}
          </p>
        )}
        <DaySheets
          planner={planner}
          child={nickname}
          cards={cards}
          wishes={wishes}
          changes={changes}
        />
      </section>
      {cards === undefined ? null : (
        <DayDesk
          cards={cards}
          isStanding={isPlanOf(plans?.get(day), cards.sheets)}
          name={words.fileName(nickname, day)}
          isBusy={changes.busy !== undefined}
          isCounted={view.stock !== undefined}
          wishes={wishes}
          onWishes={setWishes}
          onPrint={() => void changes.keep()}
          onAnew={() => void changes.anew()}
        />
      )}
    </>
  );
}
