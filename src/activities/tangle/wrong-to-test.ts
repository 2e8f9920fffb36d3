// Tasks of tangle that break a rule on purpose.
import { COLOUR_NAMES } from '../../palette/index.ts';
import {
  anyOf,
  type Made,
  placesWhere,
  replaced,
  toggled,
  type WrongWays,
  without,
} from '../wrong-ways.ts';
import type { Answer, Placed, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names one more or less': (task, random) => ({
    ...task,
    answer: toggled(task.answer, random.int(0, task.printed.candidates.length - 1)),
  }),
  'R1 an outline is missing from the tangle': (task, random) =>
    withTangle(task, without(task.printed.tangle, random.int(0, task.printed.tangle.length - 1))),
  'R1 an outline is in the tangle that the key does not name': (task, random) => {
    const figure = task.printed.candidates[random.pick(absentOnes(task))];
    const at = random.int(0, task.printed.tangle.length - 1);
    return figure && withOutline(task, at, (placed) => ({ ...placed, figure }));
  },
  'R1 an outline of the tangle is not among those to choose from': (task, random) => {
    const gone = random.pick(task.answer);
    const answer = toggled(task.answer, gone).map((place) => (place > gone ? place - 1 : place));
    const candidates = without(task.printed.candidates, gone);
    return { printed: { ...task.printed, candidates }, answer };
  },
  'R4 none is absent': ({ printed, answer }) => {
    const candidates = answer.flatMap((place) => printed.candidates[place] ?? []);
    return { printed: { ...printed, candidates }, answer: [...candidates.keys()] };
  },
  'R5 two to choose from are alike': (task, random) => {
    const { candidates } = task.printed;
    const [one, other] = [random.pick(task.answer), random.pick(absentOnes(task))];
    const figure = candidates[one];
    return (
      figure && {
        ...task,
        printed: { ...task.printed, candidates: replaced(candidates, other, figure) },
      }
    );
  },
  'R6 two outlines have one middle': (task, random) => {
    const [one = 0, other = 0] = random.sample([...task.printed.tangle.keys()], 2);
    const at = task.printed.tangle[other];
    return at && withOutline(task, one, ({ figure }) => ({ ...at, figure }));
  },
  'R7 an outline of the tangle has another colour': (task, random) => {
    const colours = task.printed.candidates.map(({ colour }) => colour);
    const at = random.int(0, task.printed.tangle.length - 1);
    const free = anyOf(
      random,
      COLOUR_NAMES.filter((name) => !colours.includes(name)),
    );
    const isColoured = placesWhere(colours, (colour) => colour !== undefined).length > 0;
    if (!isColoured || !free) return undefined;
    return withOutline(task, at, ({ figure, ...place }) => ({
      ...place,
      figure: { ...figure, colour: free },
    }));
  },
};

function absentOnes({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.candidates, (_, place) => !answer.includes(place));
}

function withTangle(task: Task, tangle: readonly Placed[]): Task | undefined {
  return tangle.length === 0 ? undefined : { ...task, printed: { ...task.printed, tangle } };
}

function withOutline(task: Task, at: number, change: (placed: Placed) => Placed): Task | undefined {
  const placed = task.printed.tangle[at];
  return placed && withTangle(task, replaced(task.printed.tangle, at, change(placed)));
}
