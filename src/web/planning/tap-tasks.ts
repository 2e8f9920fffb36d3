// What can be tapped on the picture of a sheet to note what was chosen instead.
import { activityOf, type Decision } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import { figureName } from '../../figures/index.ts';
import { makeSheet, readCode } from '../../sheets/index.ts';
import type { TapTask } from './cards.ts';

/** By task of the sheet in order. */
export function tapTasks({ code }: { readonly code: string }): Result<readonly TapTask[]> {
  const spec = readCode(code);
  const sheet = spec.ok ? makeSheet(spec.value) : spec;
  if (!sheet.ok) return sheet;
  const activity = activityOf(sheet.value.spec.activity);
  return accept(sheet.value.tasks.map((task) => tapTask(activity.decisions(task))));
}

function tapTask(decisions: readonly Decision[]): TapTask {
  return {
    choices: decisions
      .filter(({ about }) => about === undefined)
      .flatMap(({ options }) =>
        options.flatMap(({ mark, figure, isRight }) =>
          mark === undefined ? [] : [{ mark, name: figureName(figure), isRight }],
        ),
      ),
    about: decisions.flatMap(({ about, options, takenFor }) => {
      if (about === undefined) return [];
      const wrong = options.filter(({ isRight }) => !isRight);
      const named = wrong.map(({ figure }) => figureName(figure));
      return [{ mark: about, name: takenFor ? figureName(takenFor) : '', wrong: named }];
    }),
  };
}
