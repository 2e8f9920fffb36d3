// Where the tasks of a sheet stand on its page.
import { activityOf, type Size, type Task } from '../activities/index.ts';
import { type Area, sheetArea } from '../page/index.ts';
import { arrangeTasks } from './arrange.ts';
import type { Sheet } from './sheet.ts';

export interface PlacedTask {
  readonly task: Task;
  readonly place: Area;
  /** Of the place: the size that the task is drawn at. */
  readonly size: Size;
}

/** In the order of the sheet; a defect where they have no room. */
export function placedTasks({ spec, code, tasks }: Sheet): readonly PlacedTask[] {
  const { activity, page } = spec;
  const rooms = tasks.map((task) => activityOf(activity).room(task.printed));
  const places = arrangeTasks(rooms, sheetArea(page.paper, page.orientation));
  if (!places) throw new Error(`sheet ${code}: its tasks have no room on its page`);
  return tasks.flatMap((task, index) => {
    const place = places[index];
    return place ? [{ task, place, size: { widthMm: place.width, heightMm: place.height } }] : [];
  });
}
