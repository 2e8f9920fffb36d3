// What is put on the page one by one: stickers and things drawn with a pen, in the order in which they are quickest.
import type { Language } from '../activities/index.ts';
import type { Bounds } from '../base/index.ts';
import { type Figure, figureName, formOf, isOwnColoured, isPicture } from '../figures/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { isWithin, middleOf } from './bounds.ts';
import { byHandWords } from './catalogue.ts';
import type { Laid } from './layout.ts';
import type { Pen, Placement } from './parts.ts';
import { isStanding, type Piece, type Standing } from './piece.ts';

/** What is put on the page, not ruled. */
type Made = Standing | Extract<Piece, { readonly kind: 'patch' }>;

/** `areas` are the boxes, or what stands for them, in their order. */
export function placementsOf(
  laid: readonly Laid[],
  areas: readonly Bounds[],
  language: Language,
): readonly Placement[] {
  const all = laid.flatMap((each, piece) => {
    const placement = placementOf(each, areas, language);
    return placement ? [{ ...placement, piece }] : [];
  });
  const numbered = all
    .sort(
      (one, other) =>
        Number(other.isSticker) - Number(one.isSticker) ||
        penOrder(one.colour) - penOrder(other.colour) ||
        (one.isSticker ? one.widthMm - other.widthMm : 0) ||
        one.piece - other.piece,
    )
    .map((placement, index) => ({ ...placement, number: index + 1 }));
  return numbered.map((placement) => {
    const carrier = laid[placement.piece]?.piece.rides?.node;
    const inside = numbered.find(({ piece }) => laid[piece]?.piece.node === carrier);
    return carrier && inside ? { ...placement, inside: inside.number } : placement;
  });
}

function penOrder(pen: Pen): number {
  return pen === 'own' ? COLOUR_NAMES.length : COLOUR_NAMES.indexOf(pen);
}

function placementOf(
  { piece, bounds, sticker }: Laid,
  areas: readonly Bounds[],
  language: Language,
): Omit<Placement, 'number' | 'piece'> | undefined {
  if (!isStanding(piece) && piece.kind !== 'patch') return undefined;
  const { x, y } = middleOf(bounds);
  const box = boxAround(bounds, areas);
  return {
    isSticker: sticker !== undefined,
    name: nameOf(piece, language),
    colour: penOf(piece),
    widthMm: tidy(bounds.right - bounds.left),
    heightMm: tidy(bounds.bottom - bounds.top),
    xMm: x,
    yMm: y,
    ...(box === undefined ? {} : { box }),
    isPatch: piece.kind === 'patch',
    isCopied: isRich(piece),
  };
}

/** Sizes are measured to the millimetre. */
function tidy(mm: number): number {
  return Math.max(1, Math.round(mm));
}

function nameOf(piece: Made, language: Language): string {
  const words = byHandWords(language);
  switch (piece.kind) {
    case 'ring':
      return piece.isDashed ? words.dashedRing : words.ring;
    case 'dot':
      return words.dot;
    case 'named':
      return piece.name;
    case 'patch':
      return figureName(withoutColour(piece.figure), language);
    case 'figure':
      return piece.name ?? figureName(withoutColour(piece.figure), language);
  }
}

/** The colour is said by the pen; without it a picture would no longer be a silhouette. */
function withoutColour(figure: Figure): Figure {
  return isPicture(formOf(figure)) ? figure : { ...figure, colour: undefined };
}

/** Ink is drawn with a black pen. */
function penOf(piece: Made): Pen {
  if (piece.kind !== 'figure' && piece.kind !== 'patch') return 'black';
  return isOwnColoured(piece.figure) ? 'own' : (piece.figure.colour ?? 'black');
}

function isRich(piece: Made): boolean {
  if (piece.kind !== 'figure' && piece.kind !== 'patch') return false;
  const { figure } = piece;
  const fill = figure.fill ?? 'solid';
  return isPicture(formOf(figure)) || (fill !== 'solid' && fill !== 'outline');
}

const SLACK_MM = 0.01;

function boxAround(bounds: Bounds, areas: readonly Bounds[]): number | undefined {
  const sizeOf = ({ left, right, top, bottom }: Bounds) => (right - left) * (bottom - top);
  const around = areas
    .map((area, index) => ({ area, number: index + 1 }))
    .filter(({ area }) => isWithin(bounds, area, SLACK_MM))
    .sort((one, other) => sizeOf(one.area) - sizeOf(other.area));
  return around[0]?.number;
}
