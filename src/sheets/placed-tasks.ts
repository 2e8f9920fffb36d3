// Where the tasks of a sheet stand on its page.
import { activityOf, type Size, type Task } from '../activities/index.ts';
import { type Area, sheetArea } from '../page/index.ts';
import { arrangeTasks } from './arrange.ts';
import { enlargedRooms, enlargementIn } from './large.ts';
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

/** In the order of the sheet; a defect where they have no room. */
export function placedTasks({ spec, code, tasks }: Sheet): readonly PlacedTask[] {
  const { activity, page, size } = spec;
  const style = styleOf(spec);
  const rooms = tasks.map((task) => activityOf(activity).room(task.printed, style));
  const area = sheetArea(page.paper, page.orientation, page.margin);
  const places = arrangeTasks(enlargedRooms(rooms, size), area);
  if (!places) throw new Error(`sheet ${code}: its tasks have no room on its page`);
  const times = enlargementIn(rooms, places, size);
  return tasks.flatMap((task, index) => {
    const place = places[index];
    if (!place) return [];
    const drawnAt = { widthMm: place.width / times, heightMm: place.height / times };
    return [{ task, place, size: drawnAt, times }];
  });
}
