// How a recipe writes which of its sheets were changed.

/** One changed sheet as the recipe writes it. */
export function changedText(sheet: number, code: string): string {
  return `${sheet}:${code}`;
}

/** The number of the last changed sheet; 0 where there is none. */
export function lastChanged(changed: readonly string[] | undefined): number {
  return Math.max(0, ...(changed ?? []).map(numberOf).filter(Number.isInteger));
}

/** The number of the sheet, 1 upward; not a number where the text is none of these. */
export function numberOf(text: string): number {
  return Number(text.slice(0, text.indexOf(':')));
}

export function codeIn(text: string): string {
  return text.slice(text.indexOf(':') + 1);
}
