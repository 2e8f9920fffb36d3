// The goals that a pack serves, by curriculum, with the sheets that serve them.
import type { Language } from '../activities/index.ts';
import { FRAMEWORKS, type Framework, GOALS, type GoalId, goalsOf } from './goals.ts';
import type { Pack } from './pack.ts';
import { rangesText } from './pack-parts.ts';
import { pageWords } from './page-catalogue.ts';
import type { ServedGoal } from './page-words.ts';
import type { Sheet } from './sheet.ts';

/** What each curriculum is called. */
export function frameworkNames(language: Language): Readonly<Record<Framework, string>> {
  return pageWords(language).goals.frameworks;
}

export interface Served {
  readonly framework: Framework;
  /** In the order of the table of goals. */
  readonly goals: readonly ServedGoal[];
}

/** What the pack serves of each curriculum that it names; those of which it serves nothing are left out. */
export function servedGoals({ sheets, goals = [] }: Pack, language: Language): readonly Served[] {
  if (goals.length === 0) return [];
  const words = pageWords(language).goals;
  const places = placesOfGoals(sheets);
  return FRAMEWORKS.filter((framework) => goals.includes(framework)).flatMap((framework) => {
    const served = GOALS.filter((goal) => goal.framework === framework).flatMap(({ id }) => {
      const numbers = places.get(id);
      if (!numbers) return [];
      const some = { text: rangesText(numbers), count: numbers.length };
      const isAll = numbers.length === sheets.length;
      return [{ id, meaning: words.meanings[id], sheets: isAll ? undefined : some }];
    });
    return served.length > 0 ? [{ framework, goals: served }] : [];
  });
}

/** The numbers of the sheets that serve each goal. */
function placesOfGoals(sheets: readonly Sheet[]): ReadonlyMap<GoalId, readonly number[]> {
  const places = new Map<GoalId, number[]>();
  for (const [index, { spec }] of sheets.entries()) {
    for (const id of goalsOf(spec)) {
      const numbers = places.get(id) ?? [];
      numbers.push(index + 1);
      places.set(id, numbers);
    }
  }
  return places;
}
