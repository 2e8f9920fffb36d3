// Tasks of in-every-box that break a rule on purpose.
import { type Figure, sameFigure } from '../../figures/index.ts';
import { anyOf, hardlyOther, type Made, replaced, type WrongWays } from '../wrong-ways.ts';
import type { Answer, Box, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 a second figure stands in every box': (task, random) => {
    const rival = anyOf(random, strangersOf(task));
    if (!rival) return undefined;
    const boxes = task.printed.boxes.map((box) => {
      if (holds(box.figures, rival)) return box;
      const gives = random.pick(strangersIn(task, box));
      return withFigures(box, swapped(box.figures, gives, rival));
    });
    return { ...task, printed: { ...task.printed, boxes } };
  },
  'R1 a figure of the key is missing from one box': (task, random) => {
    const shared = random.pick(task.answer.figures);
    return inOneBox(task, random.int(0, task.printed.boxes.length - 1), ({ figures }) => {
      const other = anyOf(random, lackedBy(task, figures));
      return other && swapped(figures, shared, other);
    });
  },
  'R1 the key names another figure': (task, random) => {
    const { figures } = task.answer;
    const other = anyOf(random, strangersOf(task));
    if (!other) return undefined;
    return { ...task, answer: { figures: replaced(figures, 0, other) } };
  },
  'R1 the key names one figure too many': (task, random) => {
    const other = anyOf(random, strangersOf(task));
    return other && { ...task, answer: { figures: [...task.answer.figures, other] } };
  },
  'R3 a figure stands twice in one box': (task, random) =>
    inOneBox(task, random.int(0, task.printed.boxes.length - 1), (box) => {
      const gives = anyOf(random, strangersIn(task, box));
      return gives && swapped(box.figures, gives, random.pick(task.answer.figures));
    }),
  'R4 one box holds a figure more': (task, random) =>
    inOneBox(task, random.int(0, task.printed.boxes.length - 1), ({ figures, places }) => {
      const other = anyOf(random, lackedBy(task, figures));
      return other && !places ? [...figures, other] : undefined;
    }),
  'R5 in one box a figure of the key is hardly another one': (task, random) => {
    const shared = random.pick(task.answer.figures);
    return inOneBox(task, random.int(0, task.printed.boxes.length - 1), ({ figures }) =>
      swapped(figures, shared, hardlyOther(shared)),
    );
  },
  'R8 all boxes are alike': (task) => {
    const [first] = task.printed.boxes;
    if (!first || strangersIn(task, first).length === 0) return undefined;
    return { ...task, printed: { ...task.printed, boxes: task.printed.boxes.map(() => first) } };
  },
  'R9 there is a circle too many': (task) => {
    const { circles } = task.printed;
    return circles === undefined
      ? undefined
      : { ...task, printed: { ...task.printed, circles: circles + 1 } };
  },
};

function inOneBox(
  task: Task,
  at: number,
  change: (box: Box) => readonly Figure[] | undefined,
): Task | undefined {
  const box = task.printed.boxes[at];
  const figures = box && change(box);
  if (!figures) return undefined;
  const boxes = replaced(task.printed.boxes, at, withFigures(box, figures));
  return { ...task, printed: { ...task.printed, boxes } };
}

function withFigures(box: Box, figures: readonly Figure[]): Box {
  return { ...box, figures };
}

function holds(figures: readonly Figure[], figure: Figure): boolean {
  return figures.some((other) => sameFigure(other, figure));
}

function swapped(figures: readonly Figure[], one: Figure, other: Figure): readonly Figure[] {
  return figures.map((figure) => (sameFigure(figure, one) ? other : figure));
}

/** Figures of a box that are not of the key. */
function strangersIn({ answer }: Task, { figures }: Box): readonly Figure[] {
  return figures.filter((figure) => !holds(answer.figures, figure));
}

function strangersOf(task: Task): readonly Figure[] {
  return task.printed.boxes.flatMap((box) => strangersIn(task, box));
}

/** Figures of the page that are not among these. */
function lackedBy(task: Task, figures: readonly Figure[]): readonly Figure[] {
  return strangersOf(task).filter((figure) => !holds(figures, figure));
}
