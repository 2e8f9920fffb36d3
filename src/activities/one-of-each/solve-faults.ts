// What makes a printed grid unfit, in however many ways it can be filled.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, sameFigure } from '../../figures/index.ts';
import { colourFaults, stickerFaults } from '../colour-answers.ts';
import { areAlikeUpright, areOfOneForm } from '../lying-otherwise.ts';
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
  const isDirectionMeant = areOfOneForm(figures);
  return figures.flatMap((one, index) =>
    figures.slice(index + 1).flatMap((other) => {
      const names = { one: { figure: one }, other: { figure: other } };
      if (!fairlyDifferent(one, other)) return [told('faults', 'alike', names)];
      const isTurned = !isDirectionMeant && areAlikeUpright(one, other);
      return isTurned ? [told('one-of-each', 'fault.turned', names)] : [];
    }),
  );
}

function responseFaults({ response, figures, stickerMm }: Printed): readonly Told[] {
  const isByColour = response === 'sticker' || response === 'counters' || response === 'colour-in';
  if (!isByColour) return [];
  return [...colourFaults(figures), ...(response === 'sticker' ? stickerFaults(stickerMm) : [])];
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
