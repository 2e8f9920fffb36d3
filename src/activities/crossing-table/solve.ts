// Finds everything that may belong into the empty cells of a printed table, and what makes a page unfit.
import { type Figure, fairlyDifferent, figureName, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { type Reading, readingsOf } from './solve-readings.ts';
import { type Answer, type Printed, responseTo } from './task.ts';

/** Of readings that fill the cells otherwise each is an answer, if what it needs is to be had. */
export function solve(printed: Printed): Findings<Answer> {
  const { rows, loose } = printed;
  const shape = shapeFaults(printed);
  if (shape.length > 0) return { answers: [], faults: shape };
  const readings = readingsOf(printed);
  const isEmpty = rows.flat().map((figure) => figure === null);
  const told = readings.flatMap(({ cells }) => {
    const wanted = cells.filter((_, cell) => isEmpty[cell]);
    const figures = wanted.flatMap((figure) => (figure ? [figure] : []));
    return figures.length === wanted.length ? [{ figures }] : [];
  });
  const answers = different(told.filter(({ figures }) => areOffered(figures, loose)));
  return {
    answers,
    faults: [
      ...readingFaults(printed, readings, told),
      ...likeFaults(readings, loose ?? []),
      ...looseFaults(printed),
    ],
  };
}

function shapeFaults({ rows, rowHeads, columnHeads }: Printed): readonly string[] {
  const columns = rows[0]?.length ?? 0;
  const isTable = rows.length > 1 && columns > 1 && rows.every((row) => row.length === columns);
  const areHeaded =
    (rowHeads ?? rows).length === rows.length && (columnHeads ?? rows[0])?.length === columns;
  return [
    ...(isTable ? [] : ['the cells are not several rows and columns']),
    ...(areHeaded ? [] : ['there are not as many heads as rows or columns']),
    ...(rows.some((row) => row.includes(null)) ? [] : ['no cell is empty']),
  ];
}

function readingFaults(
  printed: Printed,
  readings: readonly Reading[],
  told: readonly Answer[],
): readonly string[] {
  const isUntold = readings.length > told.length;
  const isMissing = told.some(({ figures }) => !areOffered(figures, printed.loose));
  return [
    ...(readings.length === 0
      ? ['rows and columns are about nothing that all figures bear out']
      : []),
    ...(isUntold ? ['what a row or column is about cannot be found from its figures'] : []),
    ...(isMissing && told.length === 1 ? ['a figure that belongs into a cell is not offered'] : []),
  ];
}

/** Figures of one reading that pass for each other, or are the same in two cells. */
function likeFaults(readings: readonly Reading[], loose: readonly Figure[]): readonly string[] {
  return readings.flatMap(({ cells }) => {
    const told = cells.flatMap((figure) => (figure ? [figure] : []));
    const others = loose.filter((figure) => !told.some((other) => sameFigure(figure, other)));
    const all = [...told, ...others];
    return all.flatMap((one, index) =>
      all
        .slice(index + 1)
        .filter((other) => !areFair(one, other))
        .map((other) => `hard to tell apart: ${figureName(one)} and ${figureName(other)}`),
    );
  });
}

const verdicts = new Map<string, boolean>();
/** Forgotten when this many pairs are known, so that a hostile file cannot fill the memory. */
const MOST_KNOWN = 20_000;

/** Whether two figures are fairly different, remembered. */
function areFair(one: Figure, other: Figure): boolean {
  const key = `${keyOf(one)} ${keyOf(other)}`;
  const known = verdicts.get(key);
  if (known !== undefined) return known;
  const verdict = fairlyDifferent(one, other);
  if (verdicts.size >= MOST_KNOWN) verdicts.clear();
  verdicts.set(key, verdict);
  return verdict;
}

function keyOf({
  form,
  colour,
  size,
  turn,
  mirrored,
  count,
  layout,
  dotSize,
  fill,
}: Figure): string {
  return [form, colour, size, turn, mirrored, count, layout, dotSize, fill].join();
}

function looseFaults(printed: Printed): readonly string[] {
  const { rows, loose } = printed;
  const isDrawn = responseTo(printed) === 'draw';
  if (!loose) return isDrawn ? [] : ['there is nothing to put into the cells'];
  const isTwice = loose.some((figure, index) => isAmong(figure, loose.slice(0, index)));
  const given = rows.flat().filter((figure) => figure !== null);
  return [
    ...(isDrawn ? ['figures are offered, but the child draws'] : []),
    ...(isTwice ? ['a figure is offered twice'] : []),
    ...(loose.some((figure) => isAmong(figure, given))
      ? ['a figure is offered that stands in the table already']
      : []),
  ];
}

/** Where the child draws, everything is to be had. */
function areOffered(figures: readonly Figure[], loose: readonly Figure[] | undefined): boolean {
  return loose === undefined || figures.every((figure) => isAmong(figure, loose));
}

function isAmong(figure: Figure, figures: readonly Figure[]): boolean {
  return figures.some((other) => sameFigure(figure, other));
}

function different(answers: readonly Answer[]): readonly Answer[] {
  return answers.filter(
    ({ figures }, index) =>
      !answers
        .slice(0, index)
        .some((other) =>
          other.figures.every((figure, place) => sameFigure(figure, figures[place] ?? {})),
        ),
  );
}
