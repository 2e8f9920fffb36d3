// Where the tasks of a sheet stand on its page.
import { activityOf, type Language, type Size, type Task } from '../activities/index.ts';
import { type Area, sheetArea } from '../page/index.ts';
import { arrangeTasks } from './arrange.ts';
import { type Enlargement, enlargedRooms, enlargementIn, enlargementsOf } from './large.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';

export interface PlacedTask {
  readonly task: Task;
  readonly place: Area;
  /** What the task is drawn at, before it is made larger. */
  readonly size: Size;
  /** How many times larger than usual it is printed. */
  readonly times: number;
}

/** In the order of the sheet, as they are read in the language; a defect where they have no room. */
export function placedTasks(sheet: Sheet, language?: Language): readonly PlacedTask[] {
  const { spec, code, tasks } = sheet;
  const area = sheetArea(spec.page.paper, spec.page.orientation, spec.page.margin);
  const places = placesAtBest(sheet, language, area);
  if (!places) throw new Error(`sheet ${code}: its tasks have no room on its page`);
  return tasks.flatMap((task, index) => {
    const placed = places[index];
    return placed ? [{ task, ...placed }] : [];
  });
}

type Placed = Omit<PlacedTask, 'task'>;

/** Drawn as large as they have room; undefined: at no size. */
function placesAtBest(
  sheet: Sheet,
  language: Language | undefined,
  area: Area,
): readonly Placed[] | undefined {
  const { spec, tasks } = sheet;
  const rooms = roomsIn(sheet);
  for (const enlargement of enlargementsOf(activityOf(spec.activity), tasks, spec.size)) {
    const ground = { area, enlargement };
    const usual = arranged(rooms, ground);
    if (usual) return placesIn(sheet, language, usual, ground);
  }
  return undefined;
}

/** Where nothing is read otherwise, no room is measured again. */
function placesIn(
  sheet: Sheet,
  language: Language | undefined,
  usual: readonly Placed[],
  ground: Ground,
): readonly Placed[] {
  if (language === undefined || language === 'en') return usual;
  const rooms = roomsIn(sheet, language);
  return isRoomFor(rooms, usual) ? usual : (rearranged(rooms, ground) ?? usual);
}

interface Ground {
  readonly area: Area;
  readonly enlargement: Enlargement;
}

function roomsIn({ spec, tasks }: Sheet, language?: Language): readonly Size[] {
  const { room } = activityOf(spec.activity);
  return tasks.map((task) => room(task.printed, styleOf(spec, language)));
}

function arranged(
  rooms: readonly Size[],
  { area, enlargement }: Ground,
  needed = enlargedRooms(rooms, enlargement),
): readonly Placed[] | undefined {
  const places = arrangeTasks(needed, area);
  if (!places) return undefined;
  const times = enlargementIn(rooms, places, enlargement);
  return places.map((place) => {
    return { place, times, size: { widthMm: place.width / times, heightMm: place.height / times } };
  });
}

/**
 * Which tasks a sheet has must not hang on its language. So where their layout in another language needs other places,
 * they get them; and where these leave less room for large print, it is as large as it can be.
 */
function rearranged(rooms: readonly Size[], ground: Ground): readonly Placed[] | undefined {
  return arranged(rooms, ground) ?? arranged(rooms, ground, rooms);
}

/** Places are sums, which may differ in their last digits. */
const SLACK_MM = 0.001;

function isRoomFor(rooms: readonly Size[], places: readonly Placed[]): boolean {
  return rooms.every(({ widthMm, heightMm }, index) => {
    const at = places[index]?.size ?? { widthMm: 0, heightMm: 0 };
    return widthMm <= at.widthMm + SLACK_MM && heightMm <= at.heightMm + SLACK_MM;
  });
}
