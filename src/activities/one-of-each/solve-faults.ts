// What makes a printed grid unfit, in however many ways it can be filled.
import {
  type Figure,
  fairlyDifferent,
  figureName,
  formOf,
  sameFigure,
} from '../../figures/index.ts';
import type { Answer, Printed } from './task.ts';

const BOXED_ORDER = 4;

/** Reasons in plain words. */
export function faultsOf(
  printed: Printed,
  isSquare: boolean,
  isKnown: boolean,
  answers: readonly Answer[],
): readonly string[] {
  const { rows, figures, boxes = false } = printed;
  return [
    ...(isSquare ? [] : ['the grid has not as many rows and columns as there are figures']),
    ...(figures.length < 2 ? ['there is only one figure to use'] : []),
    ...(isKnown ? [] : ['the grid holds a figure that is not among those to use']),
    ...(rows.some((row) => row.includes(null)) ? [] : ['no cell is empty']),
    ...(boxes && figures.length !== BOXED_ORDER ? ['the grid cannot be cut into blocks'] : []),
    ...unlikeFaults(figures),
    ...responseFaults(printed),
    ...pieceFaults(printed, answers),
  ];
}

/** Figures to use that are, or may pass for, one and the same. */
function unlikeFaults(figures: readonly Figure[]): readonly string[] {
  const isDirectionMeant = figures.every((figure) => formOf(figure) === formOf(figures[0] ?? {}));
  return figures.flatMap((one, index) =>
    figures.slice(index + 1).flatMap((other) => {
      const names = `${figureName(one)} and ${figureName(other)}`;
      if (!fairlyDifferent(one, other)) return [`hard to tell apart: ${names}`];
      const isTurned = !isDirectionMeant && isTurnedSame(one, other);
      return isTurned ? [`the same but for how they lie: ${names}`] : [];
    }),
  );
}

function isTurnedSame(one: Figure, other: Figure): boolean {
  const upright = { turn: 0, mirrored: false };
  return sameFigure({ ...one, ...upright }, { ...other, ...upright });
}

/** A sticker, a counter or a colour answers only where all are alike but for it. */
function responseFaults({ response, figures, stickerMm }: Printed): readonly string[] {
  const isByColour = response === 'sticker' || response === 'counters' || response === 'colour-in';
  if (!isByColour) return [];
  const [first] = figures;
  const isColourAlone = figures.every(
    (figure) =>
      figure.colour !== undefined && sameFigure({ ...first, colour: figure.colour }, figure),
  );
  return [
    ...(isColourAlone ? [] : ['the figures differ in more than their colour']),
    ...(response === 'sticker' && stickerMm === undefined
      ? ['the size of the stickers is not told']
      : []),
  ];
}

/** Pieces to cut out are exactly those that the empty cells need. */
function pieceFaults({ response, pieces }: Printed, answers: readonly Answer[]): readonly string[] {
  if (response !== 'cut') return pieces ? ['there are pieces, but nothing is to be cut out'] : [];
  if (!pieces) return ['there are no pieces to cut out'];
  const [answer] = answers;
  const isEnough = !answer || areSameSets(pieces, answer.figures);
  return isEnough ? [] : ['the pieces are not those that the empty cells need'];
}

function areSameSets(one: readonly Figure[], other: readonly Figure[]): boolean {
  const left = [...other];
  const isEachFound = one.every((figure) => {
    const place = left.findIndex((candidate) => sameFigure(candidate, figure));
    if (place >= 0) left.splice(place, 1);
    return place >= 0;
  });
  return isEachFound && left.length === 0;
}
