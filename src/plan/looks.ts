// The choices of a child that can show what it mixes up, from its records.
import type { Decision, Option } from '../activities/index.ts';
import { type Figure, figureName, pairLikeness } from '../figures/index.ts';
import { type Language, loadedLanguages } from '../languages/index.ts';
import { type Look, offeredByLikeness } from '../learner/index.ts';
import type { Instead, TaskResult } from '../records/index.ts';
import { pairNames } from './pair-names.ts';
import type { TaskFacts } from './sheet-facts.ts';
import type { GivenSheet } from './standing.ts';

/**
 * All looks of the recorded sheets, in order, with figures named in `language`. What was noted by name is found in every
 * language whose catalogue is loaded.
 */
export function looksOf(given: readonly GivenSheet[], language: Language = 'en'): readonly Look[] {
  return given.flatMap(({ result, facts }) =>
    result.tasks.flatMap((task, place) => {
      const asked = facts.tasks[place];
      return asked ? looksAt(task, asked, language) : [];
    }),
  );
}

/** A right task was right at every decision; of a wrong one only what was noted is known. */
function looksAt(task: TaskResult, { decisions }: TaskFacts, language: Language): readonly Look[] {
  return decisions.flatMap((decision) => {
    if (task.outcome === 'right') return lookOf(decision, language);
    const chosen = (task.instead ?? []).flatMap((instead) => chosenIn(decision, instead));
    return chosen.flatMap((option) => lookOf(decision, language, option));
  });
}

/** The wrong option that a note names: by the mark that was tapped or, about a figure, by the name. */
function chosenIn({ about, options }: Decision, { place, label }: Instead): readonly Option[] {
  const isMeant = ({ figure, mark }: Option) =>
    about === undefined
      ? mark !== undefined && mark === place
      : about === place && isCalled(figure, label);
  return options.filter((option) => !option.isRight && isMeant(option));
}

function isCalled(figure: Figure, label: string | undefined): boolean {
  return loadedLanguages().some((language) => figureName(figure, language) === label);
}

function lookOf(
  { options, takenFor }: Decision,
  language: Language,
  chosen?: Option,
): readonly Look[] {
  if (takenFor === undefined) return [];
  const wrong = options.filter(({ isRight }) => !isRight);
  const named = new Map(wrong.map(({ figure }) => [figure, pairNames(takenFor, figure, language)]));
  const labelOf = ({ figure }: Option) => named.get(figure)?.[1] ?? '';
  const likeness: Record<string, number> = {};
  const beside = new Map<string, string>();
  for (const option of wrong) {
    const label = labelOf(option);
    likeness[label] = (likeness[label] ?? 0) + pairLikeness(takenFor, option.figure);
    beside.set(label, named.get(option.figure)?.[0] ?? '');
  }
  const offered = offeredByLikeness(likeness).map((each) => ({
    ...each,
    beside: beside.get(each.label) ?? '',
  }));
  return [{ right: '', offered, ...(chosen ? { chosen: labelOf(chosen) } : {}) }];
}
