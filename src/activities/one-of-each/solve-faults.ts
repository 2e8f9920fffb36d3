// What makes a printed grid unfit, in however many ways it can be filled.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, formOf, sameFigure } from '../../figures/index.ts';
import type { Answer, Printed } from './task.ts';

const BOXED_ORDER = 4;

/** Reasons in plain words. */
export function faultsOf(
  printed: Printed,
  isSquare: boolean,
  isKnown: boolean,
  answers: readonly Answer[],
): readonly Told[] {
  const { rows, figures, boxes = false } = printed;
  return [
    ...(isSquare ? [] : [told('one-of-each', 'fault.no-square')]),
    ...(figures.length < 2 ? [told('one-of-each', 'fault.one-figure')] : []),
    ...(isKnown ? [] : [told('one-of-each', 'fault.stranger')]),
    ...(rows.some((row) => row.includes(null)) ? [] : [told('faults', 'no-empty-cell')]),
    ...(boxes && figures.length !== BOXED_ORDER ? [told('one-of-each', 'fault.blocks')] : []),
    ...unlikeFaults(figures),
    ...responseFaults(printed),
    ...pieceFaults(printed, answers),
  ];
}

/** Figures to use that are, or may pass for, one and the same. */
function unlikeFaults(figures: readonly Figure[]): readonly Told[] {
  const isDirectionMeant = figures.every((figure) => formOf(figure) === formOf(figures[0] ?? {}));
  return figures.flatMap((one, index) =>
    figures.slice(index + 1).flatMap((other) => {
      const names = { one: { figure: one }, other: { figure: other } };
      if (!fairlyDifferent(one, other)) return [told('faults', 'alike', names)];
      const isTurned = !isDirectionMeant && isTurnedSame(one, other);
      return isTurned ? [told('one-of-each', 'fault.turned', names)] : [];
    }),
  );
}

function isTurnedSame(one: Figure, other: Figure): boolean {
  const upright = { turn: 0, mirrored: false };
  return sameFigure({ ...one, ...upright }, { ...other, ...upright });
}

/** A sticker, a counter or a colour answers only where all are alike but for it. */
function responseFaults({ response, figures, stickerMm }: Printed): readonly Told[] {
  const isByColour = response === 'sticker' || response === 'counters' || response === 'colour-in';
  if (!isByColour) return [];
  const [first] = figures;
  const isColourAlone = figures.every(
    (figure) =>
      figure.colour !== undefined && sameFigure({ ...first, colour: figure.colour }, figure),
  );
  return [
    ...(isColourAlone ? [] : [told('faults', 'more-than-colour')]),
    ...(response === 'sticker' && stickerMm === undefined ? [told('faults', 'sticker-size')] : []),
  ];
}

/** Pieces to cut out are exactly those that the empty cells need. */
function pieceFaults({ response, pieces }: Printed, answers: readonly Answer[]): readonly Told[] {
  if (response !== 'cut') return pieces ? [told('one-of-each', 'fault.idle-pieces')] : [];
  if (!pieces) return [told('one-of-each', 'fault.no-pieces')];
  const [answer] = answers;
  const isEnough = !answer || areSameSets(pieces, answer.figures);
  return isEnough ? [] : [told('one-of-each', 'fault.pieces')];
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
