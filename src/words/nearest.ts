// The choice that a mistyped word most likely meant.

/** The nearest of `choices`, if it is near enough to be worth asking about; case does not count. */
export function nearestOf(typed: string, choices: readonly string[]): string | undefined {
  let nearest: { readonly choice: string; readonly edits: number } | undefined;
  for (const choice of choices) {
    const edits = editsBetween(typed.toLowerCase(), choice.toLowerCase());
    if (edits <= Math.max(1, choice.length / 3) && (!nearest || edits < nearest.edits)) {
      nearest = { choice, edits };
    }
  }
  return nearest?.choice;
}

/** Letters to add, drop, change or swap with a neighbour (optimal string alignment). */
function editsBetween(one: string, other: string): number {
  const rows: number[][] = [Array.from({ length: other.length + 1 }, (_, column) => column)];
  const at = (row: number, column: number) => rows[row]?.[column] ?? Number.POSITIVE_INFINITY;
  for (let row = 1; row <= one.length; row++) {
    rows.push([row]);
    for (let column = 1; column <= other.length; column++) {
      const change = at(row - 1, column - 1) + (one[row - 1] === other[column - 1] ? 0 : 1);
      const isSwap = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      const swap = isSwap ? at(row - 2, column - 2) + 1 : Number.POSITIVE_INFINITY;
      rows[row]?.push(Math.min(change, swap, at(row - 1, column) + 1, at(row, column - 1) + 1));
    }
  }
  return at(one.length, other.length);
}
