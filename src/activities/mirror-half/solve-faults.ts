// What makes a page unfit: a part that hides a wrong copy, figures that no mirror shows, halves that do not fit.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, formOf, sameFigure, stanceOf } from '../../figures/index.ts';
import { colourFaults } from '../colour-answers.ts';
import { type Line, type Place, seenIn, wholeOf } from './solve-places.ts';
import { type Cells, isChosen, type Printed, responseTo } from './task.ts';

export function faultsOf(printed: Printed): readonly Told[] {
  const { rows, columns, cells } = printed.part;
  if (cells.length !== rows * columns) {
    return [told('mirror-half', 'fault.places', { places: cells.length, wanted: rows * columns })];
  }
  const figures = cells.filter((figure) => figure !== null);
  if (figures.length === 0) return [told('mirror-half', 'fault.empty')];
  return [
    ...figureFaults(figures),
    ...nearFaults(figures),
    ...(isByColour(printed) ? colourFaults(figures) : []),
    ...copyFaults(printed),
    ...offeredFaults(printed),
  ];
}

function isByColour(printed: Printed): boolean {
  const response = responseTo(printed);
  return response === 'sticker' || response === 'colour-in';
}

function figureFaults(figures: readonly Figure[]): readonly Told[] {
  const faults = figures.flatMap((figure) => {
    if (figure.fill === 'slanted-stripes') return [told('mirror-half', 'fault.stripes')];
    if (stanceOf(figure).turn % 90 !== 0) return [told('mirror-half', 'fault.slant')];
    const isPaper = figure.colour === 'white' && (figure.fill ?? 'solid') === 'solid';
    const isFilled = formOf(figure) === 'square' || formOf(figure) === 'circle';
    return isPaper && isFilled ? [told('mirror-half', 'fault.white')] : [];
  });
  return [...new Set(faults)];
}

/** Two figures that are neither alike nor fairly different: which of them belongs in the mirror? */
function nearFaults(figures: readonly Figure[]): readonly Told[] {
  const isNear = figures.some((one, index) =>
    figures
      .slice(index + 1)
      .some((other) => !sameFigure(one, other) && !fairlyDifferent(one, other)),
  );
  return isNear ? [told('mirror-half', 'fault.alike')] : [];
}

/** The missing parts: beside the given one, below or above it, and across both lines. */
function missingParts(printed: Printed): readonly (readonly Place[])[] {
  const all = wholeOf(printed);
  const combinations: readonly (readonly Line[])[] = [['upright'], ['level'], ['upright', 'level']];
  return combinations
    .map((lines) => all.filter((place) => place.lines.join() === lines.join()))
    .filter((places) => places.length > 0);
}

/** A part that looks right shifted or turned half round tells nothing of the mirror. */
function copyFaults(printed: Printed): readonly Told[] {
  const { cells } = printed.part;
  const upsideDown = [...cells].reverse();
  const turned = upsideDown.map((figure) => figure && seenIn(figure, ['upright', 'level']));
  const faults = missingParts(printed).flatMap((places) => {
    const right = places.map(({ source, lines }) => {
      const figure = cells[source] ?? null;
      return figure && seenIn(figure, lines);
    });
    const isAcross = places[0]?.lines.length === 2;
    return [
      ...(areSame(right, cells) ? [told('mirror-half', 'fault.shifted')] : []),
      // Across both lines the half turn is what the mirrors show.
      ...(!isAcross && (areSame(right, upsideDown) || areSame(right, turned))
        ? [told('mirror-half', 'fault.turned')]
        : []),
    ];
  });
  return [...new Set(faults)];
}

function offeredFaults(printed: Printed): readonly Told[] {
  const { part, axis, offered } = printed;
  if (isChosen(responseTo(printed)) !== (offered !== undefined)) {
    return [told('mirror-half', 'fault.offered')];
  }
  if (!offered) return [];
  if (axis === 'both') return [told('mirror-half', 'fault.quarters')];
  if (offered.some(({ cells }) => cells.length !== part.cells.length)) {
    return [told('mirror-half', 'fault.size')];
  }
  const isTwice = offered.some(({ cells }, index) =>
    offered.slice(index + 1).some((other) => areSame(cells, other.cells)),
  );
  return [
    ...(offered.length < 2 ? [told('mirror-half', 'fault.one-half')] : []),
    ...(isTwice ? [told('mirror-half', 'fault.halves-alike')] : []),
  ];
}

function areSame(one: Cells, other: Cells): boolean {
  return one.every((cell, place) => {
    const beside = other[place] ?? null;
    return cell === null || beside === null ? cell === beside : sameFigure(cell, beside);
  });
}
