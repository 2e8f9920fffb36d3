// What makes a printed in-every-box task unfit, whatever its answer.
import { figureName } from '../../figures/index.ts';
import { leastCellMm } from '../placing.ts';
import type { Kind } from './solve-kinds.ts';
import type { Box, Place, Printed } from './task.ts';

/** Side in mm of the largest cell in which a figure is printed, sizes that differ and stickers not counted. */
const CELL_MM = 22;
/** A smaller sticker still gets this much room, in mm, so that a finger finds it. */
const TARGET_MM = 12;

/** Reasons in plain words; `shared` is how many kinds stand in every box. */
export function faultsOf(
  printed: Printed,
  kinds: readonly Kind[],
  shared: number,
): readonly string[] {
  const { boxes } = printed;
  if (boxes.length < 2) return ['there is only one box, so nothing can be compared'];
  return [
    ...kinds.flatMap(repeatFaults),
    ...sizeFaults(boxes),
    ...(shared === kinds.length ? ['all boxes hold the same figures'] : []),
    ...circleFaults(printed, shared),
    ...boxes.flatMap((box, index) => placeFaults(box, index, printed)),
  ];
}

function repeatFaults({ figure, counts }: Kind): readonly string[] {
  return counts.flatMap((count, box) =>
    count > 1 ? [`box ${box + 1} shows the same figure ${count} times: ${figureName(figure)}`] : [],
  );
}

function sizeFaults(boxes: readonly Box[]): readonly string[] {
  const counts = boxes.map((box) => box.figures.length);
  return new Set(counts).size > 1
    ? [`the boxes hold different numbers of figures: ${counts.join(', ')}`]
    : [];
}

/** Circles say how many figures to look for, so that their number must be right. */
function circleFaults({ response, circles = 0 }: Printed, shared: number): readonly string[] {
  const expected = response === 'sticker' ? shared : 0;
  if (circles === expected) return [];
  if (response !== 'sticker')
    return [`${circles} empty circles are printed, but no sticker is asked for`];
  return [`${circles} empty circles are printed for ${shared} figures that are in every box`];
}

function placeFaults({ figures, places }: Box, index: number, printed: Printed): readonly string[] {
  if (!places) return [];
  if (places.length !== figures.length) {
    return [`box ${index + 1} has ${figures.length} figures and ${places.length} places`];
  }
  const { stickerMm } = printed;
  const all = printed.boxes.flatMap((box) => box.figures);
  const cellMm = Math.max(CELL_MM, leastCellMm(all));
  const apartMm = stickerMm === undefined ? cellMm : Math.max(stickerMm, TARGET_MM);
  const touches = places.some((place, at) =>
    places.slice(0, at).some((earlier) => isNearer(place, earlier, apartMm)),
  );
  return touches ? [`two figures in box ${index + 1} touch or overlap`] : [];
}

function isNearer(one: Place, other: Place, mm: number): boolean {
  const [dx, dy] = [one.x - other.x, one.y - other.y];
  return dx * dx + dy * dy < mm * mm;
}
