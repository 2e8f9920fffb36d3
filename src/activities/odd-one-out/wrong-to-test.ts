// Tasks of odd-one-out that break a rule on purpose.
import { type Figure, formOf, isPicture } from '../../figures/index.ts';
import { type Made, placesWhere, replaced, type WrongWays } from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names another figure': (task, random) => ({
    ...task,
    answer: { odd: random.pick(others(task)) },
  }),
  'R1 the odd one is like another': (task, random) =>
    withFigure(task, task.answer.odd, figureAt(task, random.pick(others(task)))),
  'R1 the odd one has changed places with another': (task, random) => {
    const other = random.pick(others(task));
    const [odd, usual] = [figureAt(task, task.answer.odd), figureAt(task, other)];
    return withFigure(withFigure(task, task.answer.odd, usual), other, odd);
  },
  'R1 another one has a size of its own': (task, random) => {
    const sizes = new Set(task.printed.figures.map(({ size = 1 }) => size));
    if (sizes.size > 1) return undefined;
    const other = random.pick(others(task));
    const [size = 1] = sizes;
    return withFigure(task, other, { ...figureAt(task, other), size: size * 0.6 });
  },
  'R1 another one has a filling of its own': (task, random) => {
    const { figures } = task.printed;
    const isPlain = ({ fill, ...figure }: Figure) =>
      fill === undefined && /^(circle|square|triangle|heart|star)$/.test(formOf(figure));
    if (!figures.every(isPlain)) return undefined;
    const other = random.pick(others(task));
    return withFigure(task, other, { ...figureAt(task, other), fill: 'checks' });
  },
  'R6 one stands alone in the last row': (task) => {
    const columns = task.printed.figures.length - 1;
    return { ...task, printed: { ...task.printed, columns } };
  },
  'R6 one stands apart': (task, random) => {
    const { figures, columns = figures.length } = task.printed;
    if (columns < figures.length) return undefined;
    const last = figures.length - 1;
    const shifts = figures.map((_, place) => ({
      x: place === last ? 0.5 : 0.1 * random.int(-1, 0) - 0.1,
      y: 0,
    }));
    return { ...task, printed: { ...task.printed, shifts } };
  },
  'R6 one stands out of line': (task, random) => {
    const { figures } = task.printed;
    const at = random.int(0, figures.length - 1);
    const shifts = figures.map((_, place) => ({ x: 0, y: place === at ? 0.3 : 0 }));
    return { ...task, printed: { ...task.printed, shifts } };
  },
  'R10 a picture of a third kind is among them': (task, random) => {
    if (!task.printed.figures.every((figure) => isPicture(formOf(figure)))) return undefined;
    const other = random.pick(others(task));
    return withFigure(task, other, { form: 'capital-A' });
  },
};

function others({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.figures, (_, place) => place !== answer.odd);
}

function figureAt({ printed }: Task, place: number): Figure {
  return printed.figures[place] ?? {};
}

function withFigure(task: Task, at: number, figure: Figure): Task {
  const figures = replaced(task.printed.figures, at, figure);
  return { ...task, printed: { ...task.printed, figures } };
}
