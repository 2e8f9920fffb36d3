// What makes a printed row unfit, whatever belongs into its empty places.
import { type Figure, fairlyDifferent, figureName, sameFigure } from '../../figures/index.ts';
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
): readonly string[] {
  return [
    ...rowFaults(printed, kinds),
    ...(doesRepeat ? [] : ['the row does not show what repeats twice']),
    ...unlikeFaults([...kinds, ...(printed.offered ?? [])]),
    ...offerFaults(printed, wanted),
    ...responseFaults(printed),
  ];
}

function rowFaults({ row }: Printed, kinds: readonly Figure[]): readonly string[] {
  const [first] = row;
  return [
    ...(row.includes(null) ? [] : ['the row has no empty place']),
    ...(first === null ? ['the row begins with an empty place'] : []),
    ...(row.length > MOST_PLACES ? [`a row of ${row.length} places does not fit one line`] : []),
    ...(kinds.length < 2 ? ['all figures of the row are alike'] : []),
    ...(isOneGap(row) ? [] : ['the empty places are not side by side']),
  ];
}

function isOneGap(row: Printed['row']): boolean {
  const empty = row.filter((figure) => figure === null).length;
  const first = row.indexOf(null);
  return row.slice(Math.max(0, first), first + empty).every((figure) => figure === null);
}

/** Different figures that may pass for one. */
function unlikeFaults(figures: readonly Figure[]): readonly string[] {
  return figures.flatMap((one, index) =>
    figures
      .slice(index + 1)
      .filter((other) => !sameFigure(one, other) && !fairlyDifferent(one, other))
      .map((other) => `hard to tell apart: ${figureName(one)} and ${figureName(other)}`),
  );
}

function offerFaults(printed: Printed, wanted: readonly Figure[]): readonly string[] {
  const { offered, row } = printed;
  const response = responseTo(printed);
  const isChosen = response === 'point' || response === 'ring';
  if (!offered) return isChosen ? ['nothing is offered to choose from'] : [];
  const absent = wanted.filter((figure) => !offered.some((other) => sameFigure(figure, other)));
  const empty = row.filter((figure) => figure === null).length;
  return [
    ...(isChosen ? [] : ['figures are offered, but nothing is to be chosen']),
    ...(offered.length < 2 ? ['only one figure is offered'] : []),
    ...absent.map((figure) => `not offered, but may be the answer: ${figureName(figure)}`),
    ...(response === 'ring' && empty > 1
      ? ['a ring does not say which empty place it is for']
      : []),
    ...(isTwice(offered) ? ['a figure is offered twice'] : []),
  ];
}

function isTwice(figures: readonly Figure[]): boolean {
  return figures.some((figure, index) =>
    figures.slice(0, index).some((other) => sameFigure(figure, other)),
  );
}

/** A sticker or a colour answers only where all are alike but for it. */
function responseFaults(printed: Printed): readonly string[] {
  const response = responseTo(printed);
  if (response !== 'sticker' && response !== 'colour-in') return [];
  const figures = printed.row.filter((figure) => figure !== null);
  const [first] = figures;
  const isByColour = figures.every(
    (figure) =>
      figure.colour !== undefined && sameFigure({ ...first, colour: figure.colour }, figure),
  );
  return [
    ...(isByColour ? [] : ['the figures differ in more than their colour']),
    ...(response === 'sticker' && printed.stickerMm === undefined
      ? ['the size of the stickers is not told']
      : []),
  ];
}
