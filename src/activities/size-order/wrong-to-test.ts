// Tasks of size-order that break a rule on purpose.
import { type Figure, LEAST_DOT_SIZE } from '../../figures/index.ts';
import {
  exchanged,
  hardlyOther,
  type Made,
  placesWhere,
  replaced,
  type WrongWays,
} from '../wrong-ways.ts';
import { type Answer, isOneAsked, type Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names another one': (task, random) => {
    if (!isOneAsked(task.printed)) return undefined;
    return { ...task, answer: [random.pick(others(task))] };
  },
  'R1 the key has two exchanged': (task, random) => {
    if (isOneAsked(task.printed)) return undefined;
    const [one = 0, other = 0] = random.sample([...task.answer.keys()], 2);
    return { ...task, answer: exchanged(task.answer, one, other) };
  },
  'R1 two figures have changed places': (task, random) => {
    const [at = 0] = task.answer;
    const other = random.pick(placesWhere(task.printed.figures, (_, place) => place !== at));
    return withFigures(task, exchanged(task.printed.figures, at, other));
  },
  'R1 another figure is just as big': (task, random) => {
    const [at = 0] = task.answer;
    const other = random.pick(placesWhere(task.printed.figures, (_, place) => place !== at));
    return withFigure(task, other, task.printed.figures[at]);
  },
  'R1 another figure is hardly smaller or bigger': (task, random) => {
    const [at = 0] = task.answer;
    const figure = task.printed.figures[at];
    const other = random.pick(placesWhere(task.printed.figures, (_, place) => place !== at));
    return figure && withFigure(task, other, hardlyOther(figure));
  },
  'R3 one is of another kind': (task, random) => {
    const at = random.int(0, task.printed.figures.length - 1);
    const { form, size = 1 } = task.printed.figures[at] ?? {};
    const other = form === 'picture-cat' ? 'picture-dog' : 'picture-cat';
    return withFigure(task, at, { form: other, size });
  },
  'R4 of two cards that of fewer dots has more ink': (task) => {
    const { figures } = task.printed;
    const [at = 0] = task.answer;
    const apart = (place: number) => Math.abs(dotsOn(figures[place]) - dotsOn(figures[at]));
    const others = [...placesWhere(figures, (_, place) => place !== at)];
    const [near = at] = others.sort((one, other) => apart(one) - apart(other));
    const [few, many] = dotsOn(figures[at]) < dotsOn(figures[near]) ? [at, near] : [near, at];
    const small = { ...figures[many], dotSize: LEAST_DOT_SIZE };
    return small.form === 'dots' && inkOf(small) < inkOf(figures[few])
      ? withFigure(task, many, small)
      : undefined;
  },
  'R5 the figures stand in their order': ({ printed, answer }) => {
    if (isOneAsked(printed)) return undefined;
    const figures = answer.flatMap((place) => printed.figures[place] ?? []);
    return { printed: { ...printed, figures }, answer: [...answer.keys()] };
  },
  'R7 the one between is asked for of an even number': ({ printed, answer }) => {
    const [at = 0] = answer;
    if (printed.asked !== 'middle') return undefined;
    const figures = at === 0 ? printed.figures.slice(0, -1) : printed.figures.slice(1);
    return { printed: { ...printed, figures }, answer: [Math.max(0, at - 1)] };
  },
};

function dotsOn(figure: Figure = {}): number {
  return figure.count ?? 1;
}

function inkOf(figure: Figure = {}): number {
  return dotsOn(figure) * (figure.dotSize ?? 1) ** 2;
}

function others({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.figures, (_, place) => !answer.includes(place));
}

function withFigures(task: Task, figures: readonly Figure[]): Task {
  return { ...task, printed: { ...task.printed, figures } };
}

function withFigure(task: Task, at: number, figure: Figure | undefined): Task | undefined {
  return figure && withFigures(task, replaced(task.printed.figures, at, figure));
}
