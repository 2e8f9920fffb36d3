// Which tasks can be printed with figures as outlines: those in which nothing is told by how a figure is filled.
import type { PrintStyle } from '../page/index.ts';

/**
 * The style in which a task is drawn: without saving where `hangsOnFilling`, or where a printed figure is an
 * outline, textured, white (its outline shows alone) or a quantity (whose inked area is held equal).
 */
export function styleForTask(
  printed: unknown,
  style: PrintStyle,
  hangsOnFilling = false,
): PrintStyle {
  if (style.ink === undefined) return style;
  if (!hangsOnFilling && !someFigureTellsByFilling(printed)) return style;
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
