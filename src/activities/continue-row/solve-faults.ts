// What makes a printed row unfit, whatever belongs into its empty places.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, sameFigure } from '../../figures/index.ts';
import { colourFaults, stickerFaults } from '../colour-answers.ts';
import { type Printed, responseTo } from './task.ts';

/** Places of a row across a sheet, at the least size of figures. */
const MOST_PLACES = 11;

/** What is known of a row when its faults are looked for. */
interface Known {
  /** Every attribute shows its unit at least twice. */
  readonly doesRepeat: boolean;
  /** All figures that may belong into the empty places. */
  readonly wanted: readonly Figure[];
}

/** Reasons in plain words; `kinds` are the different figures that are shown. */
export function faultsOf(
  printed: Printed,
  kinds: readonly Figure[],
  { doesRepeat, wanted }: Known,
): readonly Told[] {
  return [
    ...rowFaults(printed, kinds),
    ...(doesRepeat ? [] : [told('continue-row', 'fault.not-twice')]),
    ...unlikeFaults([...kinds, ...(printed.offered ?? [])]),
    ...offerFaults(printed, wanted),
    ...responseFaults(printed),
  ];
}

function rowFaults({ row }: Printed, kinds: readonly Figure[]): readonly Told[] {
  const [first] = row;
  return [
    ...(row.includes(null) ? [] : [told('continue-row', 'fault.no-gap')]),
    ...(first === null ? [told('continue-row', 'fault.gap-first')] : []),
    ...(row.length > MOST_PLACES
      ? [told('continue-row', 'fault.too-long', { places: row.length })]
      : []),
    ...(kinds.length < 2 ? [told('continue-row', 'fault.all-alike')] : []),
    ...(isOneGap(row) ? [] : [told('continue-row', 'fault.gaps-apart')]),
  ];
}

function isOneGap(row: Printed['row']): boolean {
  const empty = row.filter((figure) => figure === null).length;
  const first = row.indexOf(null);
  return row.slice(Math.max(0, first), first + empty).every((figure) => figure === null);
}

/** Different figures that may pass for one. */
function unlikeFaults(figures: readonly Figure[]): readonly Told[] {
  return figures.flatMap((one, index) =>
    figures
      .slice(index + 1)
      .filter((other) => !sameFigure(one, other) && !fairlyDifferent(one, other))
      .map((other) => told('faults', 'alike', { one: { figure: one }, other: { figure: other } })),
  );
}

function offerFaults(printed: Printed, wanted: readonly Figure[]): readonly Told[] {
  const { offered, row } = printed;
  const response = responseTo(printed);
  const isChosen = response === 'point' || response === 'ring';
  if (!offered) return isChosen ? [told('continue-row', 'fault.nothing-offered')] : [];
  const absent = wanted.filter((figure) => !offered.some((other) => sameFigure(figure, other)));
  const empty = row.filter((figure) => figure === null).length;
  const isOnlyRight = offered.every((figure) => wanted.some((other) => sameFigure(figure, other)));
  return [
    ...(isChosen ? [] : [told('continue-row', 'fault.idle-offer')]),
    ...(offered.length < 2 ? [told('continue-row', 'fault.one-offered')] : []),
    ...(offered.length > 1 && isOnlyRight ? [told('continue-row', 'fault.only-right')] : []),
    ...absent.map((figure) => told('continue-row', 'fault.not-offered', { figure: { figure } })),
    ...(response === 'ring' && empty > 1 ? [told('continue-row', 'fault.ring')] : []),
    ...(isTwice(offered) ? [told('faults', 'offered-twice')] : []),
  ];
}

function isTwice(figures: readonly Figure[]): boolean {
  return figures.some((figure, index) =>
    figures.slice(0, index).some((other) => sameFigure(figure, other)),
  );
}

function responseFaults(printed: Printed): readonly Told[] {
  const response = responseTo(printed);
  if (response !== 'sticker' && response !== 'colour-in') return [];
  const figures = printed.row.filter((figure) => figure !== null);
  return [
    ...colourFaults(figures),
    ...(response === 'sticker' ? stickerFaults(printed.stickerMm) : []),
  ];
}
