// What makes a page unfit: a part that hides a wrong copy, figures that no mirror shows, halves that do not fit.
import { type Figure, fairlyDifferent, formOf, sameFigure, stanceOf } from '../../figures/index.ts';
import { type Line, type Place, seenIn, wholeOf } from './solve-places.ts';
import { type Cells, isChosen, type Printed, responseTo } from './task.ts';

export function faultsOf(printed: Printed): readonly string[] {
  const { rows, columns, cells } = printed.part;
  if (cells.length !== rows * columns) {
    return [`the given part has ${cells.length} places instead of ${rows * columns}`];
  }
  const figures = cells.filter((figure) => figure !== null);
  if (figures.length === 0) return ['nothing stands in the given part'];
  return [
    ...figureFaults(figures),
    ...nearFaults(figures),
    ...copyFaults(printed),
    ...offeredFaults(printed),
  ];
}

function figureFaults(figures: readonly Figure[]): readonly string[] {
  const faults = figures.flatMap((figure) => {
    if (figure.fill === 'slanted-stripes') return ['slanted stripes would lean the other way'];
    if (stanceOf(figure).turn % 90 !== 0) return ['a figure lies at a slant'];
    const isPaper = figure.colour === 'white' && (figure.fill ?? 'solid') === 'solid';
    const isFilled = formOf(figure) === 'square' || formOf(figure) === 'circle';
    return isPaper && isFilled ? ['a white dot or cell looks like an empty place'] : [];
  });
  return [...new Set(faults)];
}

/** Two figures that are neither alike nor fairly different: which of them belongs in the mirror? */
function nearFaults(figures: readonly Figure[]): readonly string[] {
  const isNear = figures.some((one, index) =>
    figures
      .slice(index + 1)
      .some((other) => !sameFigure(one, other) && !fairlyDifferent(one, other)),
  );
  return isNear ? ['two figures are hardly to be told apart'] : [];
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
function copyFaults(printed: Printed): readonly string[] {
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
      ...(areSame(right, cells)
        ? ['a shifted copy of the given part is its mirror image too']
        : []),
      // Across both lines the half turn is what the mirrors show.
      ...(!isAcross && (areSame(right, upsideDown) || areSame(right, turned))
        ? ['the given part turned half round is its mirror image too']
        : []),
    ];
  });
  return [...new Set(faults)];
}

function offeredFaults(printed: Printed): readonly string[] {
  const { part, axis, offered } = printed;
  if (isChosen(responseTo(printed)) !== (offered !== undefined)) {
    return ['halves are offered where one is chosen, and nowhere else'];
  }
  if (!offered) return [];
  if (axis === 'both') return ['three quarters are missing, and halves are offered'];
  if (offered.some(({ cells }) => cells.length !== part.cells.length)) {
    return ['an offered half is not as large as the given one'];
  }
  const isTwice = offered.some(({ cells }, index) =>
    offered.slice(index + 1).some((other) => areSame(cells, other.cells)),
  );
  return [
    ...(offered.length < 2 ? ['there is only one half to choose from'] : []),
    ...(isTwice ? ['two of the offered halves are alike'] : []),
  ];
}

function areSame(one: Cells, other: Cells): boolean {
  return one.every((cell, place) => {
    const beside = other[place] ?? null;
    return cell === null || beside === null ? cell === beside : sameFigure(cell, beside);
  });
}
