// Tasks of missing-part that break a rule on purpose.
import { type Figure, sameFigure } from '../../figures/index.ts';
import {
  anyOf,
  hardlyOther,
  type Made,
  othersThan,
  placesWhere,
  replaced,
  type WrongWays,
  withOtherInKey,
} from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key has another figure': (task, random) =>
    withOtherInKey(task, task.printed.field, random),
  'R5 the key is another piece': (task, random) => {
    const { offered = [] } = task.printed;
    const piece = anyOf(random, wrongPieces(task));
    const figures = piece === undefined ? undefined : offered[piece];
    return figures && { ...task, answer: { figures } };
  },
  'R5 the right piece is not there': (task) => {
    const { offered } = task.printed;
    if (!offered) return undefined;
    const wrong = wrongPieces(task).flatMap((place) => [offered[place] ?? []]);
    return { ...task, printed: { ...task.printed, offered: wrong } };
  },
  'R5 the right piece is there twice': (task, random) => {
    const { offered } = task.printed;
    const place = anyOf(random, wrongPieces(task));
    if (!offered || place === undefined) return undefined;
    const changed = replaced(offered, place, task.answer.figures);
    return { ...task, printed: { ...task.printed, offered: changed } };
  },
  'R6 a wrong piece is hardly another one than the right one': (task, random) => {
    const { offered } = task.printed;
    const place = anyOf(random, wrongPieces(task));
    if (!offered || place === undefined) return undefined;
    const piece = task.answer.figures.map(hardlyOther);
    return { ...task, printed: { ...task.printed, offered: replaced(offered, place, piece) } };
  },
  'R7 there is a second hole': (task, random) => {
    const place = random.pick(placesWhere(task.printed.field, (figure) => figure !== null));
    return withField(task, replaced(task.printed.field, place, null));
  },
  'R8 a figure of the field breaks the pattern': (task, random) => {
    const { field, columns } = task.printed;
    // A corner may lie on a slant of its own, where any figure goes on with what slants.
    const corners = [0, columns - 1, field.length - columns, field.length - 1];
    const places = placesWhere(
      field,
      (figure, place) => figure !== null && !corners.includes(place),
    );
    const place = anyOf(random, places) ?? 0;
    const other = anyOf(random, othersThan(field, field[place]));
    return other && withField(task, replaced(field, place, other));
  },
  'R8 a figure of the field is like no other': (task, random) => {
    const { field } = task.printed;
    const place = random.pick(placesWhere(field, (figure) => figure !== null));
    const stranger: Figure = { form: 'numeral-8', turn: 45 };
    return withField(task, replaced(field, place, stranger));
  },
};

function withField(task: Task, field: Printed['field']): Task {
  return { ...task, printed: { ...task.printed, field } };
}

function wrongPieces({ printed, answer }: Task): readonly number[] {
  const isRight = (piece: readonly Figure[]) =>
    piece.every((figure, at) => sameFigure(figure, answer.figures[at] ?? {}));
  return placesWhere(printed.offered ?? [], (piece) => !isRight(piece));
}
