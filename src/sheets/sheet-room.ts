// Whether a sheet's tasks have room on the page, and what to ask for where they have not.
import type { Activity, Task } from '../activities/index.ts';
import type { Refusal } from '../base/index.ts';
import { ORIENTATIONS, PAPER_NAMES, sheetArea } from '../page/index.ts';
import { mostThatFit } from './arrange.ts';
import type { PageChoice } from './sheet-spec.ts';

/** How many of the first tasks have room on the page. */
export function mostOnPage(activity: Activity, tasks: readonly Task[], page: PageChoice): number {
  const rooms = tasks.map((task) => activity.room(task.printed));
  return mostThatFit(rooms, sheetArea(page.paper, page.orientation));
}

/** Why these tasks cannot stand on this page; undefined where they can. */
export function roomRefusal(
  activity: Activity,
  tasks: readonly Task[],
  page: PageChoice,
): Refusal | undefined {
  const most = mostOnPage(activity, tasks, page);
  if (most === tasks.length) return undefined;
  return {
    code: 'does-not-fit',
    at: `${activity.id} › tasks`,
    got: tasks.length,
    max: most,
    unit: `${most === 1 ? 'task' : 'tasks'} on ${page.paper} ${page.orientation}`,
    advice: adviceFor(activity, tasks, page, most),
  };
}

/** Another page with room for more, else fewer tasks. */
function adviceFor(
  activity: Activity,
  tasks: readonly Task[],
  page: PageChoice,
  most: number,
): string {
  const pages = PAPER_NAMES.flatMap((paper) =>
    ORIENTATIONS.map((orientation) => ({
      name: `${paper} ${orientation}`,
      room: mostOnPage(activity, tasks, { paper, orientation }),
      // The paper in the house is harder to change than how it lies.
      isNear: paper === page.paper,
    })),
  );
  const best = pages.sort(
    (one, other) => other.room - one.room || Number(other.isNear) - Number(one.isNear),
  )[0];
  const fewer = fewerAdvice(most);
  return best && best.room > most
    ? `${fewer}, or ask for ${best.name}, which has room for ${best.room}`
    : fewer;
}

function fewerAdvice(most: number): string {
  if (most === 0) return 'choose an easier step';
  return most === 1 ? 'ask for one' : `ask for ${most} or fewer`;
}
