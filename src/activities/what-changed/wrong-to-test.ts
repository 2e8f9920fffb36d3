// Tasks of what-changed that break a rule on purpose.
import { sameFigure } from '../../figures/index.ts';
import {
  anyOf,
  exchanged,
  hardlyOther,
  type Made,
  placesWhere,
  replaced,
  toggled,
  twoThatDiffer,
  type WrongWays,
} from '../wrong-ways.ts';
import type { Answer, Printed, Scene } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names one place more or less': (task, random) => ({
    ...task,
    answer: toggled(task.answer, random.int(0, task.printed.first.length - 1)),
  }),
  'R1 a figure more is gone': (task, random) => {
    const place = anyOf(random, kept(task));
    return place === undefined ? undefined : withSecond(task, place, null);
  },
  'R1 a change is taken back': (task, random) => {
    const place = random.pick(task.answer);
    return withSecond(task, place, task.printed.first[place] ?? null);
  },
  'R1 the child is told another number': ({ printed, answer }) => ({
    printed: { ...printed, asked: printed.asked + 1 },
    answer,
  }),
  'R1 two figures more have changed places': (task, random) => {
    const { second } = task.printed;
    const places = kept(task);
    const two = twoThatDiffer(random, places, (one, other) => {
      const [first, last] = [second[one], second[other]];
      return !!first && !!last && !sameFigure(first, last);
    });
    if (!two) return undefined;
    const [one = 0, other = 0] = two.map((at) => places[at] ?? 0);
    return { ...task, printed: { ...task.printed, second: exchanged(second, one, other) } };
  },
  'R3 one more is hardly other than it was': (task, random) => {
    const place = anyOf(random, kept(task));
    const figure = place === undefined ? undefined : task.printed.second[place];
    return place === undefined || !figure
      ? undefined
      : withSecond(task, place, hardlyOther(figure));
  },
  'R7 everything is gone': ({ printed }) => ({
    printed: {
      ...printed,
      second: printed.second.map(() => null),
      asked: placesWhere(printed.first, (figure) => figure !== null).length,
    },
    answer: placesWhere(printed.first, (figure) => figure !== null),
  }),
};

/** Places that have a figure, the same in both pictures. */
function kept({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.first, (figure, place) => figure !== null && !answer.includes(place));
}

function withSecond(task: Task, at: number, figure: Scene[number]): Task {
  const second = replaced(task.printed.second, at, figure);
  return { ...task, printed: { ...task.printed, second } };
}
