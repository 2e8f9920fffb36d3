// Tasks of mirror-half that break a rule on purpose.
import type { Random } from '../../base/index.ts';
import { sameFigure } from '../../figures/index.ts';
import { anyOf, type Made, placesWhere, replaced, type WrongWays } from '../wrong-ways.ts';
import type { Answer, Cells, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key leaves one place empty': (task, random) =>
    withKey(task, (cells) => {
      const place = random.pick(placesWhere(cells, (figure) => figure !== null));
      return replaced(cells, place, null);
    }),
  'R1 the key is turned half round': (task) => withKey(task, (cells) => [...cells].reverse()),
  'R1 the key has one thing in another place': (task, random) =>
    withKey(task, (cells) => {
      const from = random.pick(placesWhere(cells, (figure) => figure !== null));
      const to = anyOf(
        random,
        placesWhere(cells, (figure) => figure === null),
      );
      if (to === undefined) return undefined;
      return replaced(replaced(cells, to, cells[from] ?? null), from, null);
    }),
  'R1 something is added to the given part': (task, random) => {
    const { cells } = task.printed.part;
    const place = anyOf(
      random,
      placesWhere(cells, (figure) => figure === null),
    );
    const figure = random.pick(cells.filter((each) => each !== null));
    return place === undefined ? undefined : withPart(task, replaced(cells, place, figure));
  },
  'R1 something is taken from the given part': (task, random) => {
    const { cells } = task.printed.part;
    const place = random.pick(placesWhere(cells, (figure) => figure !== null));
    return withPart(task, replaced(cells, place, null));
  },
  'R1 nothing is given': ({ printed, answer }) => {
    const nothing = (cells: Cells) => cells.map(() => null);
    const { part, offered } = printed;
    const made = 'cells' in answer ? { cells: nothing(answer.cells) } : answer;
    return {
      printed: {
        ...printed,
        part: { ...part, cells: nothing(part.cells) },
        ...(offered ? { offered: offered.map(({ cells }) => ({ cells: nothing(cells) })) } : {}),
      },
      answer: made,
    };
  },
  'R2 the given part is its own mirror image': ({ printed, answer }) => {
    const { rows, columns, cells } = printed.part;
    if (!('cells' in answer) || printed.axis !== 'upright') return undefined;
    const row = (at: number) => {
      const found = cells.slice(at * columns, (at + 1) * columns);
      return found.map((_, place) => found[Math.min(place, columns - 1 - place)] ?? null);
    };
    const part = Array.from({ length: rows }, (_, at) => row(at));
    if (!part.flat().every((figure) => figure === null || isUprightShape(figure))) return undefined;
    return {
      printed: { ...printed, part: { ...printed.part, cells: part.flat() } },
      answer: { cells: part.flatMap((half) => [...half, ...half]) },
    };
  },
  'R3 a letter stands there that a mirror changes': ({ printed, answer }) => {
    const place = printed.part.cells.findIndex((figure) => figure !== null);
    const cells = replaced(printed.part.cells, place, { form: 'capital-F' });
    return { printed: { ...printed, part: { ...printed.part, cells } }, answer };
  },
  'R6 the key names another half': (task, random) => {
    const choice = anyOf(random, wrongHalves(task));
    return choice === undefined ? undefined : { ...task, answer: { choice } };
  },
  'R6 two halves finish it': (task, random) => withHalf(task, random, 'right'),
  'R6 no half finishes it': (task, random) => withHalf(task, random, 'wrong'),
};

function isUprightShape(figure: NonNullable<Cells[number]>): boolean {
  return sameFigure(figure, { ...figure, mirrored: !figure.mirrored });
}

function withKey(task: Task, change: (cells: Cells) => Cells | undefined): Task | undefined {
  const { answer } = task;
  const cells = 'cells' in answer ? change(answer.cells) : undefined;
  const isOther =
    'cells' in answer && cells?.some((figure, place) => !isSame(figure, answer.cells[place]));
  return cells && isOther ? { ...task, answer: { cells } } : undefined;
}

function isSame(one: Cells[number], other: Cells[number] = null): boolean {
  return one && other ? sameFigure(one, other) : one === other;
}

function withPart(task: Task, cells: Cells): Task {
  return { ...task, printed: { ...task.printed, part: { ...task.printed.part, cells } } };
}

function wrongHalves({ printed, answer }: Task): readonly number[] {
  const { offered = [] } = printed;
  return 'choice' in answer ? placesWhere(offered, (_, place) => place !== answer.choice) : [];
}

/** A wrong half in the place of the right one, or the right one in the place of a wrong one. */
function withHalf(task: Task, random: Random, kind: 'right' | 'wrong'): Task | undefined {
  const { offered } = task.printed;
  if (!offered || !('choice' in task.answer)) return undefined;
  const [right, wrong] = [task.answer.choice, random.pick(wrongHalves(task))];
  const [at, from] = kind === 'right' ? [wrong, right] : [right, wrong];
  const half = offered[from];
  return half && { ...task, printed: { ...task.printed, offered: replaced(offered, at, half) } };
}
