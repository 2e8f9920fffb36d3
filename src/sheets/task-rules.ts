// Thin lines between the tasks of a sheet, so that nobody reads two tasks as one.
import { type Area, FAINT_INK, FINE_MM, type Group, group, line } from '../page/index.ts';

/** Lines across the page between rows, and upright ones between neighbours in a row. */
export function taskRules(places: readonly Area[], area: Area): Group {
  const rows = rowsOf(places);
  const stroke = { colour: FAINT_INK, widthMm: FINE_MM };
  const across = rows.slice(1).map((row, index) => {
    const middle = (bottomOf(rows[index] ?? row) + topOf(row)) / 2;
    return line(area.left, middle, area.left + area.width, middle, stroke);
  });
  const upright = rows.flatMap((row) =>
    row.slice(1).map((place, index) => {
      const before = row[index] ?? place;
      const middle = (before.left + before.width + place.left) / 2;
      return line(middle, place.top, middle, place.top + place.height, stroke);
    }),
  );
  return group('rules', [...across, ...upright]);
}

/** Places of one height stand in one row. */
function rowsOf(places: readonly Area[]): readonly (readonly Area[])[] {
  const tops = [...new Set(places.map(({ top }) => top))];
  return tops.map((top) => places.filter((place) => place.top === top));
}

function topOf(row: readonly Area[]): number {
  return Math.min(...row.map(({ top }) => top));
}

function bottomOf(row: readonly Area[]): number {
  return Math.max(...row.map(({ top, height }) => top + height));
}
