// The words of the goals of curricula, in each language.
import { type Language, type Say, sayIn } from '../languages/index.ts';
import { FRAMEWORKS, type Framework, GOALS, type GoalId } from './goals.ts';
import { MESSAGES } from './messages-goals-en.ts';
import type { GoalsWords, ServedGoal } from './page-words.ts';

type SayGoals = Say<typeof MESSAGES>;

export function goalsWords(language: Language): GoalsWords {
  const say = sayIn(language, 'goals', MESSAGES);
  return {
    title: say('title'),
    note: say('note'),
    frameworks: each(FRAMEWORKS, (name: Framework) => say(`framework.${name}`)),
    meanings: each(
      GOALS.map(({ id }) => id),
      (id: GoalId) => say(`goal.${id}`),
    ),
    served: (goals) => {
      const [first = '', ...others] = goals.map((goal) => servedGoal(say, goal));
      const all = others.reduce((before, next) => say('served.next', { before, next }), first);
      return say('served', { goals: all });
    },
  };
}

function each<N extends string>(
  names: readonly N[],
  said: (name: N) => string,
): Readonly<Record<N, string>> {
  return Object.fromEntries(names.map((name) => [name, said(name)])) as Record<N, string>;
}

/** Such as `P-MATH 7: simple patterns (sheets 2–3)`; the identifier stays on one line. */
function servedGoal(say: SayGoals, { id, meaning, sheets }: ServedGoal): string {
  const name = { id: id.replaceAll(' ', '\u00a0'), meaning };
  if (!sheets) return say('served.all', name);
  return say('served.some', { ...name, sheets: sheets.text, count: sheets.count });
}
