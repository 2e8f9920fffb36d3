// Which tasks can be printed with figures as outlines: those in which nothing is told by how a figure is filled.
import { areToldByInsides, type FormId } from '../figures/index.ts';
import type { PrintStyle } from '../page/index.ts';

/**
 * The style in which a task is drawn: without saving where `hangsOnFilling`, or where a printed figure is an
 * outline, textured, white (its outline shows alone) or a quantity (whose inked area is held equal), or where two
 * pictures are told apart by what is inside one outline.
 */
export function styleForTask(
  printed: unknown,
  style: PrintStyle,
  hangsOnFilling = false,
): PrintStyle {
  if (style.ink === undefined) return style;
  const tells = hangsOnFilling || someFigureTellsByFilling(printed) || someInsidesTell(printed);
  if (!tells) return style;
  const { ink: _ink, ...full } = style;
  return full;
}

/** Searches all that is printed, since every figure has these in fields of the same names. */
function someFigureTellsByFilling(printed: unknown): boolean {
  if (typeof printed !== 'object' || printed === null) return false;
  return Object.entries(printed).some(
    ([name, value]) =>
      (name === 'fill' && typeof value === 'string' && value !== 'solid') ||
      (name === 'form' && value === 'dots') ||
      (name === 'colour' && value === 'white') ||
      someFigureTellsByFilling(value),
  );
}

function someInsidesTell(printed: unknown): boolean {
  const forms = [...new Set(formsIn(printed))];
  return forms.some((one, place) =>
    forms.slice(place + 1).some((other) => areToldByInsides(one, other)),
  );
}

function formsIn(printed: unknown): readonly FormId[] {
  if (typeof printed !== 'object' || printed === null) return [];
  return Object.entries(printed).flatMap(([name, value]) =>
    name === 'form' && typeof value === 'string' ? [value as FormId] : formsIn(value),
  );
}
