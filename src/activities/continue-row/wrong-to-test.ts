// Tasks of continue-row that break a rule on purpose.
import type { Figure } from '../../figures/index.ts';
import {
  anyOf,
  hardlyOther,
  type Made,
  othersThan,
  placesOfKey,
  placesWhere,
  replaced,
  type WrongWays,
  withOtherInKey,
  without,
} from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key has another figure': (task, random) => withOtherInKey(task, task.printed.row, random),
  'R1 the unit has not come twice': (task) => {
    const { row } = task.printed;
    const gap = row.indexOf(null);
    return withRow(task, row.slice(Math.max(0, gap - 2), gap + task.answer.figures.length));
  },
  'R2 a figure of the row is another': (task, random) => {
    const { row } = task.printed;
    const at = random.pick(placesWhere(row, (figure) => figure !== null));
    const other = anyOf(random, othersThan(row, row[at]));
    return other && withRow(task, replaced(row, at, other));
  },
  'R6 a figure of the row is hardly the same': (task, random) => {
    const { row } = task.printed;
    const at = random.pick(placesWhere(row, (figure) => figure !== null));
    const figure = row[at];
    return figure ? withRow(task, replaced(row, at, hardlyOther(figure))) : undefined;
  },
  'R7 the right figure is not offered': (task, random) =>
    withOffered(task, (offered) => without(offered, random.pick(placesOfKey(task, offered)))),
  'R7 a figure is offered twice': (task, random) =>
    withOffered(task, (offered) => [...offered, random.pick(offered)]),
  'R7 only right figures are offered': (task) =>
    withOffered(task, (offered) => placesOfKey(task, offered).flatMap((at) => offered[at] ?? [])),
};

function withRow(task: Task, row: Printed['row']): Task {
  return { ...task, printed: { ...task.printed, row } };
}

function withOffered(
  task: Task,
  change: (offered: readonly Figure[]) => readonly Figure[],
): Task | undefined {
  const { offered } = task.printed;
  return offered && { ...task, printed: { ...task.printed, offered: change(offered) } };
}
