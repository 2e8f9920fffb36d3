// Tasks of same-or-different that break a rule on purpose.
import { sameFigure } from '../../figures/index.ts';
import {
  hardlyOther,
  type Made,
  placesWhere,
  replaced,
  toggled,
  type WrongWays,
} from '../wrong-ways.ts';
import type { Answer, Pair, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names a pair more or less': (task, random) => ({
    ...task,
    answer: toggled(task.answer, random.int(0, task.printed.pairs.length - 1)),
  }),
  'R1 the key names the pairs that differ': (task) => ({ ...task, answer: otherPairs(task) }),
  'R1 a pair that differed is the same': (task, random) =>
    withPair(task, random.pick(otherPairs(task)), ([one]) => [one, one]),
  'R1 a pair that was the same differs': (task, random) => {
    const from = task.printed.pairs[random.pick(otherPairs(task))];
    const to = random.pick(task.answer);
    return (
      from && withPair(task, to, ([one]) => [one, sameFigure(one, from[0]) ? from[1] : from[0]])
    );
  },
  'R3 the two of a pair are hardly different': (task, random) =>
    withPair(task, random.pick(task.answer), ([one]) => [one, hardlyOther(one)]),
  'R4 all pairs are the same': (task) => ({
    printed: { ...task.printed, pairs: task.printed.pairs.map(([one]) => [one, one] as const) },
    answer: [...task.printed.pairs.keys()],
  }),
  'R5 two boxes hold the same two figures': (task, random) => {
    const [one = 0, other = 0] = random.sample([...task.printed.pairs.keys()], 2);
    const pair = task.printed.pairs[one];
    if (!pair) return undefined;
    const isOther = task.answer.includes(one) !== task.answer.includes(other);
    const answer = isOther ? toggled(task.answer, other) : task.answer;
    return withPair({ ...task, answer }, other, () => [pair[1], pair[0]]);
  },
};

function otherPairs({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.pairs, (_, place) => !answer.includes(place));
}

function withPair(task: Task, at: number, change: (pair: Pair) => Pair): Task | undefined {
  const pair = task.printed.pairs[at];
  if (!pair) return undefined;
  return {
    ...task,
    printed: { ...task.printed, pairs: replaced(task.printed.pairs, at, change(pair)) },
  };
}
