// What can be tapped on the picture of a sheet to note what was chosen instead.
import { activityOf, type Decision } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import { type Figure, figureName } from '../../figures/index.ts';
import { makeSheetOfCode } from '../../sheets/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import type { TapTask } from './cards.ts';

/** By task of the sheet in order. */
export function tapTasks({ code }: { readonly code: string }): Result<readonly TapTask[]> {
  const sheet = makeSheetOfCode(code);
  if (!sheet.ok) return sheet;
  const activity = activityOf(sheet.value.spec.activity);
  return accept(sheet.value.tasks.map((task) => tapTask(activity.decisions(task))));
}

function nameOf(figure: Figure): string {
  return figureName(figure, languageNow());
}

function tapTask(decisions: readonly Decision[]): TapTask {
  return {
    choices: decisions
      .filter(({ about }) => about === undefined)
      .flatMap(({ options }) =>
        options.flatMap(({ mark, figure, isRight }) =>
          mark === undefined ? [] : [{ mark, name: nameOf(figure), isRight }],
        ),
      ),
    about: decisions.flatMap(({ about, options, takenFor }) => {
      if (about === undefined) return [];
      const wrong = options.filter(({ isRight }) => !isRight);
      const named = wrong.map(({ figure }) => nameOf(figure));
      return [{ mark: about, name: takenFor ? nameOf(takenFor) : '', wrong: named }];
    }),
  };
}
