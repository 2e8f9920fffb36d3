// The goals that a pack serves, by curriculum, with the sheets that serve them.
import type { Language } from '../activities/index.ts';
import { FRAMEWORKS, type Framework, GOALS, type GoalId, goalsOf } from './goals.ts';
import type { Pack } from './pack.ts';
import { rangesText } from './pack-parts.ts';
import { pageWords } from './page-catalogue.ts';
import type { ServedGoal } from './page-words.ts';

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
  const words = pageWords(language).goals;
  return FRAMEWORKS.filter((framework) => goals.includes(framework)).flatMap((framework) => {
    const numbers = new Map<GoalId, number[]>();
    for (const [index, { spec }] of sheets.entries()) {
      for (const id of goalsOf(spec, framework)) {
        const places = numbers.get(id) ?? [];
        places.push(index + 1);
        numbers.set(id, places);
      }
    }
    const served = GOALS.flatMap(({ id }) => {
      const places = numbers.get(id);
      if (!places) return [];
      const isAll = places.length === sheets.length;
      const some = { text: rangesText(places), count: places.length };
      return [{ id, meaning: words.meanings[id], sheets: isAll ? undefined : some }];
    });
    return served.length > 0 ? [{ framework, goals: served }] : [];
  });
}
