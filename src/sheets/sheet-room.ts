// Whether a sheet's tasks have room on the page, and what to ask for where they have not.
import type { Activity, Task } from '../activities/index.ts';
import { type Refusal, type Told, told } from '../base/index.ts';
import { HOME_PAPERS, ORIENTATIONS, type PaperName, sheetArea } from '../page/index.ts';
import { mostThatFit } from './arrange.ts';
import { enlargedRooms } from './large.ts';
import { type PrintChoices, styleOf } from './sheet-spec.ts';

/** What decides how much room a page has. */
type PageRoom = Pick<PrintChoices, 'page' | 'print' | 'size' | 'hand'>;

/** How many of the first tasks have room on the page. */
export function mostOnPage(activity: Activity, tasks: readonly Task[], choices: PageRoom): number {
  const { page, size } = choices;
  const style = styleOf(choices);
  const rooms = tasks.map((task) => activity.room(task.printed, style));
  const area = sheetArea(page.paper, page.orientation, page.margin);
  return mostThatFit(enlargedRooms(rooms, size), area);
}

/** Why these tasks cannot stand on this page; undefined where they can. */
export function roomRefusal(
  activity: Activity,
  tasks: readonly Task[],
  choices: PageRoom,
): Refusal | undefined {
  const { page } = choices;
  const most = mostOnPage(activity, tasks, choices);
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

/** Why these tasks cannot be drawn large: what takes a sticker keeps its size. */
export function stickerRefusal(
  activity: Activity,
  tasks: readonly Task[],
  { size }: PageRoom,
): Refusal | undefined {
  const takesStickers = tasks.some((task) =>
    activity.materials(task).some(({ kind }) => kind === 'sticker'),
  );
  if (size === undefined || !takesStickers) return undefined;
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
      room: mostOnPage(activity, tasks, {
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
