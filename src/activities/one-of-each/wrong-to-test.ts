// Tasks of one-of-each that break a rule on purpose.
import { type Figure, sameFigure } from '../../figures/index.ts';
import {
  anyOf,
  hardlyOther,
  looksOther,
  type Made,
  placesWhere,
  replaced,
  type WrongWays,
  withKeyExchanged,
  withOtherInKey,
} from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key has two figures exchanged': withKeyExchanged,
  'R1 the key has another figure': (task, random) =>
    withOtherInKey(task, task.printed.figures, random),
  'R1 two figures may change places everywhere': (task, random) => {
    const two = random.sample(task.printed.figures, 2);
    const isOne = (figure: Figure) => two.some((each) => sameFigure(each, figure));
    const rows = finished(task).map((row, at) =>
      row.map((figure, column) =>
        isOne(figure) ? null : (task.printed.rows[at]?.[column] ?? null),
      ),
    );
    const figures = rows.flatMap((row, at) =>
      row.flatMap((figure, column) => (figure ? [] : [finished(task)[at]?.[column] ?? {}])),
    );
    const pieces = task.printed.pieces ? { pieces: figures } : {};
    return { printed: { ...task.printed, ...pieces, rows }, answer: { figures } };
  },
  'R1 a row shows a figure twice': (task, random) => {
    const row = anyOf(
      random,
      placesWhere(task.printed.rows, (each) => each.filter((figure) => figure).length > 1),
    );
    const cells = row === undefined ? undefined : task.printed.rows[row];
    if (row === undefined || !cells) return undefined;
    const [one = 0, other = 0] = random.sample(
      placesWhere(cells, (figure) => figure !== null),
      2,
    );
    return withRow(task, row, replaced(cells, one, cells[other] ?? null));
  },
  'R1 a figure of the grid has become another': (task, random) => {
    const row = anyOf(
      random,
      placesWhere(task.printed.rows, (each) => each.some((figure) => figure)),
    );
    const cells = row === undefined ? undefined : task.printed.rows[row];
    if (row === undefined || !cells) return undefined;
    const at = random.pick(placesWhere(cells, (figure) => figure !== null));
    const other = random.pick(
      task.printed.figures.filter((each) => looksOther(each, cells[at] ?? {})),
    );
    return withRow(task, row, replaced(cells, at, other));
  },
  'R2 a figure to use is not shown': (task, random) => {
    const { figures } = task.printed;
    const [one = 0, other = 0] = random.sample([...figures.keys()], 2);
    return withFigures(task, replaced(figures, one, figures[other] ?? {}));
  },
  'R4 two figures to use are hardly different': (task) => {
    const [first, , ...others] = task.printed.figures;
    return first && withFigures(task, [first, hardlyOther(first), ...others]);
  },
  'R7 a piece to cut out is another': (task, random) => {
    const { pieces } = task.printed;
    if (!pieces) return undefined;
    const at = random.int(0, pieces.length - 1);
    const other = random.pick(
      task.printed.figures.filter((each) => looksOther(each, pieces[at] ?? {})),
    );
    return { ...task, printed: { ...task.printed, pieces: replaced(pieces, at, other) } };
  },
};

/** The whole grid with the answer filled in. */
function finished({ printed, answer }: Task): readonly (readonly Figure[])[] {
  let next = 0;
  return printed.rows.map((row) => row.map((figure) => figure ?? answer.figures[next++] ?? {}));
}

function withRow(task: Task, at: number, row: readonly (Figure | null)[]): Task {
  return { ...task, printed: { ...task.printed, rows: replaced(task.printed.rows, at, row) } };
}

function withFigures(task: Task, figures: readonly Figure[]): Task {
  return { ...task, printed: { ...task.printed, figures } };
}
