// Finds everything that may belong into the empty cells of a printed table, and what makes a page unfit.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, formOf, isSign, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { type Reading, readingsOf } from './solve-readings.ts';
import { type Answer, type Printed, responseTo } from './task.ts';

const MOST_ANSWERS = 20;

/** Of readings that fill the cells otherwise each is an answer, if what it needs is to be had. */
export function solve(printed: Printed): Findings<Answer> {
  const { rows, loose } = printed;
  const shape = shapeFaults(printed);
  if (shape.length > 0) return { answers: [], faults: shape };
  const readings = readingsOf(printed);
  const isEmpty = rows.flat().map((figure) => figure === null);
  const found = readings.flatMap(({ cells }) => {
    const wanted = cells.filter((_, cell) => isEmpty[cell]);
    const figures = wanted.flatMap((figure) => (figure ? [figure] : []));
    return figures.length === wanted.length ? [{ figures }] : [];
  });
  const offered = different(found.filter(({ figures }) => areOffered(figures, loose)));
  return {
    answers: offered.slice(0, MOST_ANSWERS),
    faults: [
      ...readingFaults(printed, readings, found),
      ...likeFaults(readings, loose ?? []),
      ...looseFaults(printed),
      ...inkFaults(printed),
    ],
  };
}

function shapeFaults({ rows, rowHeads, columnHeads }: Printed): readonly Told[] {
  const columns = rows[0]?.length ?? 0;
  const isTable = rows.length > 1 && columns > 1 && rows.every((row) => row.length === columns);
  const areHeaded =
    (rowHeads ?? rows).length === rows.length && (columnHeads ?? rows[0])?.length === columns;
  return [
    ...(isTable ? [] : [told('crossing-table', 'fault.no-table')]),
    ...(areHeaded ? [] : [told('crossing-table', 'fault.heads')]),
    ...(rows.some((row) => row.includes(null)) ? [] : [told('faults', 'no-empty-cell')]),
  ];
}

function readingFaults(
  printed: Printed,
  readings: readonly Reading[],
  found: readonly Answer[],
): readonly Told[] {
  const isUntold = readings.length > found.length;
  const isMissing = found.some(({ figures }) => !areOffered(figures, printed.loose));
  return [
    ...(readings.length === 0 ? [told('crossing-table', 'fault.about-nothing')] : []),
    ...(isUntold ? [told('crossing-table', 'fault.untold')] : []),
    ...(isMissing && found.length === 1 ? [told('crossing-table', 'fault.not-offered')] : []),
  ];
}

/** Figures of one reading that pass for each other, or are the same in two cells. */
function likeFaults(readings: readonly Reading[], loose: readonly Figure[]): readonly Told[] {
  return readings.flatMap(({ cells }) => {
    const found = cells.flatMap((figure) => (figure ? [figure] : []));
    const others = loose.filter((figure) => !found.some((other) => sameFigure(figure, other)));
    const all = [...found, ...others];
    return all.flatMap((one, index) =>
      all
        .slice(index + 1)
        .filter((other) => !areFair(one, other))
        .map((other) =>
          told('faults', 'alike', { one: { figure: one }, other: { figure: other } }),
        ),
    );
  });
}

const verdicts = new Map<string, boolean>();
/** Forgotten when this many pairs are known, so that a hostile file cannot fill the memory. */
const MOST_KNOWN = 20_000;

/** Whether two figures are fairly different, remembered. */
function areFair(one: Figure, other: Figure): boolean {
  const key = `${JSON.stringify(one)} ${JSON.stringify(other)}`;
  const known = verdicts.get(key);
  if (known !== undefined) return known;
  const verdict = fairlyDifferent(one, other);
  if (verdicts.size >= MOST_KNOWN) verdicts.clear();
  verdicts.set(key, verdict);
  return verdict;
}

function looseFaults(printed: Printed): readonly Told[] {
  const { rows, loose } = printed;
  const isDrawn = responseTo(printed) === 'draw';
  if (!loose) return isDrawn ? [] : [told('crossing-table', 'fault.nothing-loose')];
  const isTwice = loose.some((figure, index) => isAmong(figure, loose.slice(0, index)));
  const given = rows.flat().filter((figure) => figure !== null);
  return [
    ...(isDrawn ? [told('crossing-table', 'fault.idle-offer')] : []),
    ...(isTwice ? [told('faults', 'offered-twice')] : []),
    ...(loose.some((figure) => isAmong(figure, given))
      ? [told('crossing-table', 'fault.there-already')]
      : []),
  ];
}

/** A sign or dots in the ink of a head seem to be black ones, where black is one of the colours. */
function inkFaults({
  rows,
  loose = [],
  rowHeads = [],
  columnHeads = [],
}: Printed): readonly Told[] {
  const heads = [...rowHeads, ...columnHeads];
  const isInInk = heads.some(
    (head) => head.colour === undefined && (isSign(formOf(head)) || formOf(head) === 'dots'),
  );
  const isBlack = [...rows.flat(), ...loose, ...heads].some((figure) => figure?.colour === 'black');
  return isInInk && isBlack ? [told('crossing-table', 'fault.ink')] : [];
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
