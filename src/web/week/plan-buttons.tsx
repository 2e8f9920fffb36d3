// Planning the week, for those who have no plan yet or for all anew, with how far it is and a way to stop.
import { Button } from 'react-aria-components/Button';
import type { Plans } from './use-plans.ts';
import type { WeekInView } from './use-week.ts';
import { words } from './words.ts';

export interface PlanButtonsProps {
  readonly week: WeekInView;
  readonly plans: Plans;
  /** Whether planning is the next thing to do. */
  readonly isNext: boolean;
}

export function PlanButtons({ week, plans, isNext }: PlanButtonsProps) {
  const { chosen, lacking, planDays } = week;
  const { making, planFor, objection } = plans;
  const { run, stop } = making;
  const whyNot = whyNotPlan(week);
  const those = lacking.length === 0 ? chosen : lacking;
  return (
    <div className={isNext ? 'press' : 'plan-anew'}>
      {whyNot === '' ? (
        <div className="row">
          <Button
            className={isNext ? 'next' : 'plain'}
            isDisabled={run !== undefined || planDays.length === 0}
            onPress={() => void planFor(those)}
          >
            {planWords(week)}
          </Button>
          {run === undefined ? null : (
            <Button className="quiet" onPress={stop}>
              {words.stop}
            </Button>
          )}
        </div>
      ) : (
        <p className="help">{whyNot}</p>
      )}
      {lacking.length === 0 && whyNot === '' ? <p className="help">{words.anewHelp}</p> : null}
      <p className="outcome" aria-live="polite">
        {run === undefined ? '' : words.planning(run.child.nickname, run.done + 1, run.total)}
      </p>
      <p className="objection" role="alert">
        {objection}
      </p>
    </div>
  );
}

function planWords({ chosen, lacking }: WeekInView): string {
  if (lacking.length === 0) return words.planAnew;
  if (lacking.length === chosen.length) return words.plan;
  return words.planFor(lacking.map(({ nickname }) => nickname));
}

function whyNotPlan({ chosen, planDays }: WeekInView): string {
  if (chosen.length === 0) return words.noChildChosen;
  return planDays.length === 0 ? words.noDayLeft : '';
}
