// Tasks of crossing-table that break a rule on purpose.
import type { Figure } from '../../figures/index.ts';
import {
  anyOf,
  exchanged,
  hardlyOther,
  type Made,
  placesOfKey,
  placesWhere,
  replaced,
  type WrongWays,
  withKeyExchanged,
  without,
} from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key has two figures exchanged': withKeyExchanged,
  'R1 the key names a figure that stands in the table': (task, random) => {
    const standing = anyOf(random, shownIn(task.printed));
    if (!standing) return undefined;
    const cell = random.int(0, task.answer.figures.length - 1);
    return { ...task, answer: { figures: replaced(task.answer.figures, cell, standing) } };
  },
  'R1 two figures of one row are exchanged': (task, random) => {
    const { rows } = task.printed;
    const at = anyOf(
      random,
      placesWhere(rows, (row) => row.filter((figure) => figure).length > 1),
    );
    const row = rows[at ?? -1];
    if (at === undefined || !row) return undefined;
    const shown = placesWhere(row, (figure) => figure !== null);
    const [one = 0, other = 0] = random.sample(shown, 2);
    return withRows(task, replaced(rows, at, exchanged(row, one, other)));
  },
  'R4 two rows are about the same': ({ printed, answer }) => {
    const [first, ...others] = printed.rowHeads ?? [];
    if (!first || others.length === 0) return undefined;
    return { printed: { ...printed, rowHeads: [first, first, ...others.slice(1)] }, answer };
  },
  'R1 the heads of two columns are exchanged': ({ printed, answer }) => {
    const { columnHeads } = printed;
    return (
      columnHeads && {
        printed: { ...printed, columnHeads: exchanged(columnHeads, 0, 1) },
        answer,
      }
    );
  },
  'R7 one of the colours has become black': ({ printed, answer }) => {
    const { rowHeads = [], columnHeads = [], loose, rows } = printed;
    const heads = [...rowHeads, ...columnHeads];
    const inInk = heads.some(({ form = '' }) => form === 'dots' || form.startsWith('sign-'));
    const colour = heads.find((head) => head.colour !== undefined)?.colour;
    if (!inInk || colour === undefined) return undefined;
    const inked = (figure: Figure): Figure =>
      figure.colour === colour ? { ...figure, colour: 'black' } : figure;
    const changed = {
      ...printed,
      rows: rows.map((row) => row.map((figure) => figure && inked(figure))),
      rowHeads: printed.rowHeads?.map(inked),
      columnHeads: printed.columnHeads?.map(inked),
      loose: loose?.map(inked),
    };
    return { printed: changed, answer: { figures: answer.figures.map(inked) } };
  },
  'R5 a figure that is needed is not there': (task, random) =>
    withLoose(task, (loose) => without(loose, random.pick(placesOfKey(task, loose)))),
  'R5 a figure is there twice': (task, random) =>
    withLoose(task, (loose) => [...loose, random.pick(loose)]),
  'R4 a figure that is needed is hardly another one': (task, random) =>
    withLoose(task, (loose) => {
      const place = random.pick(placesOfKey(task, loose));
      return loose.flatMap((figure, at) => (at === place ? [hardlyOther(figure)] : [figure]));
    }),
};

function withRows(task: Task, rows: Printed['rows']): Task {
  return { ...task, printed: { ...task.printed, rows } };
}

function withLoose(
  task: Task,
  change: (loose: readonly Figure[]) => readonly Figure[],
): Task | undefined {
  const { loose } = task.printed;
  if (!loose || loose.length < 2) return undefined;
  return { ...task, printed: { ...task.printed, loose: change(loose) } };
}

function shownIn({ rows }: Printed): readonly Figure[] {
  return rows.flat().flatMap((figure) => figure ?? []);
}
