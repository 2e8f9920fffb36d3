// Reads from the picture of a sheet what can be tapped on it, as the app does, and finds just what the tasks name.
import { expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { svgOf } from '../../src/press/index.ts';
import { DEFAULT_PAGE, makeSheet, sheetPage } from '../../src/sheets/index.ts';

test.each(ACTIVITY_IDS)(
  '%s: each task of a picture holds the marks that its decisions name',
  (id) => {
    const activity = activityOf(id);
    for (const step of [1, 4, activity.ladder.length]) {
      const recipe = { activity: id, step, values: {}, seed: 20 + step, print: 'colour' } as const;
      const made = makeSheet({ ...recipe, page: DEFAULT_PAGE });
      if (!made.ok) throw new Error(JSON.stringify(made.refusals));
      const { tasks } = made.value;
      const named = tasks.map((task) => {
        const marks = activity
          .decisions(task)
          .flatMap(({ about, options }) => [about, ...options.map(({ mark }) => mark)]);
        return new Set(marks.filter((mark) => mark !== undefined).map(String));
      });
      const read = marksByTask(svgOf(sheetPage(made.value)));
      expect(read.map((marks) => new Set(marks))).toEqual(named);
      expect(read.map((marks) => marks.length)).toEqual(named.map(({ size }) => size));
    }
  },
);

/** The marks inside each group whose role is `task`, in the order of the text. */
function marksByTask(svg: string): readonly (readonly string[])[] {
  const tasks: string[][] = [];
  let depth = 0;
  let taskDepth = 0;
  for (const [tag] of svg.matchAll(/<g[ >][^>]*>?|<\/g>/g)) {
    if (tag === '</g>') {
      if (depth === taskDepth) taskDepth = 0;
      depth--;
      continue;
    }
    depth++;
    if (tag.includes('data-role="task"')) {
      tasks.push([]);
      taskDepth = depth;
    }
    const mark = /data-mark="(\d+)"/.exec(tag)?.[1];
    if (mark === undefined) continue;
    expect(taskDepth, 'a mark outside any task').toBeGreaterThan(0);
    tasks.at(-1)?.push(mark);
  }
  return tasks;
}
