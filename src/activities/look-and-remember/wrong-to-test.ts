// Tasks of look-and-remember that break a rule on purpose.
import { type Figure, sameFigure } from '../../figures/index.ts';
import {
  anyOf,
  hardlyOther,
  type Made,
  placesWhere,
  replaced,
  toggled,
  type WrongWays,
} from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 a figure of the frame comes again that the key does not name': (task, random) => {
    const { set, choices } = task.printed;
    const unseen = set.filter((figure) => !choices.some((each) => sameFigure(each, figure)));
    const figure = anyOf(random, unseen);
    return figure && withChoice(task, random.pick(luresOf(task)), figure);
  },
  'R1 the key names one more': (task, random) => ({
    ...task,
    answer: toggled(task.answer, random.pick(luresOf(task))),
  }),
  'R1 the key names one less': (task, random) => ({
    ...task,
    answer: toggled(task.answer, random.pick(task.answer)),
  }),
  'R1 a figure that was in the frame is hardly the same': (task, random) => {
    const place = random.pick(task.answer);
    const figure = task.printed.choices[place];
    return figure && withChoice(task, place, hardlyOther(figure));
  },
  'R1 a figure of the frame has become one of the wrong choices': (task, random) => {
    const figure = task.printed.choices[random.pick(task.answer)];
    const lure = task.printed.choices[random.pick(luresOf(task))];
    const at = task.printed.set.findIndex((each) => figure && sameFigure(each, figure));
    if (!lure || at < 0) return undefined;
    return { ...task, printed: { ...task.printed, set: replaced(task.printed.set, at, lure) } };
  },
  'R2 two choices are alike': (task, random) => {
    const figure = task.printed.choices[random.pick(task.answer)];
    return figure && withChoice(task, random.pick(luresOf(task)), figure);
  },
  'R2 two figures of the frame are alike': (task) => {
    const [first, second, ...others] = task.printed.set;
    if (!first || !second) return undefined;
    return { ...task, printed: { ...task.printed, set: [first, first, ...others] } };
  },
  'R4 all choices were in the frame': ({ printed, answer }) => {
    const choices = answer.flatMap((place) => printed.choices[place] ?? []);
    return { printed: { ...printed, choices }, answer: [...choices.keys()] };
  },
};

function luresOf({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.choices, (_, place) => !answer.includes(place));
}

function withChoice(task: Task, at: number, figure: Figure): Task {
  const choices = replaced(task.printed.choices, at, figure);
  return { ...task, printed: { ...task.printed, choices } };
}
