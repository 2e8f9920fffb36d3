// Whether a sheet's tasks have room on the page, and what to ask for where they have not.
import type { Activity, Task } from '../activities/index.ts';
import { type Refusal, type Told, told } from '../base/index.ts';
import { HOME_PAPERS, ORIENTATIONS, type PaperName, sheetArea } from '../page/index.ts';
import { mostThatFit } from './arrange.ts';
import { enlargedRooms, enlargementsOf } from './large.ts';
import { type PrintChoices, styleOf } from './sheet-spec.ts';

/** What decides how much room a page has. */
type PageRoom = Pick<PrintChoices, 'page' | 'print' | 'size' | 'hand'>;

/** How many of the first tasks have room on the page, as large as any have room there. */
export function mostOnPage(activity: Activity, tasks: readonly Task[], choices: PageRoom): number {
  return roomsOnPage(activity, tasks, choices).find((count) => count > 0) ?? 0;
}

/** How many of the first tasks have room on the page at each size that they may be drawn at, the best first. */
function roomsOnPage(
  activity: Activity,
  tasks: readonly Task[],
  choices: PageRoom,
): readonly number[] {
  const { page, size } = choices;
  const style = styleOf(choices);
  const rooms = tasks.map((task) => activity.room(task.printed, style));
  const area = sheetArea(page.paper, page.orientation, page.margin);
  return enlargementsOf(activity, tasks, size).map((enlargement) =>
    mostThatFit(enlargedRooms(rooms, enlargement), area),
  );
}

function mostAtAnySize(activity: Activity, tasks: readonly Task[], choices: PageRoom): number {
  return Math.max(0, ...roomsOnPage(activity, tasks, choices));
}

/** Why these tasks cannot stand on this page; undefined where they can. */
export function roomRefusal(
  activity: Activity,
  tasks: readonly Task[],
  choices: PageRoom,
): Refusal | undefined {
  const { page } = choices;
  const most = mostAtAnySize(activity, tasks, choices);
  if (most === tasks.length) return undefined;
  return {
    code: 'does-not-fit',
    at: `${activity.id} › tasks`,
    got: tasks.length,
    max: most,
    unit: told('reasons', 'amount.tasks', { paper: page.paper, lies: page.orientation }),
    advice: adviceFor(activity, tasks, choices, most),
  };
}

/** Why these tasks cannot be drawn large: their stickers are the largest that are sold. */
export function stickerRefusal(
  activity: Activity,
  tasks: readonly Task[],
  { size }: PageRoom,
): Refusal | undefined {
  if (size === undefined || enlargementsOf(activity, tasks, size).length > 0) return undefined;
  return {
    code: 'not-a-choice',
    at: `${activity.id} › size`,
    got: size,
    choices: ['usual'],
    because: told('reasons', 'sticker-size'),
  };
}

/** Another page with room for more, else fewer tasks. */
function adviceFor(
  activity: Activity,
  tasks: readonly Task[],
  choices: PageRoom,
  most: number,
): Told {
  const { page } = choices;
  const papers: readonly PaperName[] = [...new Set([page.paper, ...HOME_PAPERS])];
  const pages = papers.flatMap((paper) =>
    ORIENTATIONS.map((orientation) => ({
      ...{ paper, lies: orientation },
      room: mostAtAnySize(activity, tasks, {
        ...choices,
        page: { ...page, paper, orientation },
      }),
      // The paper in the house is harder to change than how it lies.
      isNear: paper === page.paper,
    })),
  );
  const best = pages.sort(
    (one, other) => other.room - one.room || Number(other.isNear) - Number(one.isNear),
  )[0];
  const fewer = most === 0 ? 'do.easier' : most === 1 ? 'do.one' : 'do.fewer';
  if (!best || best.room <= most) return told('reasons', fewer, { count: most });
  const { paper, lies, room } = best;
  return told('reasons', `${fewer}.page`, { count: most, paper, lies, room });
}
