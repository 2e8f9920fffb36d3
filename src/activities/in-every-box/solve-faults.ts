// What makes a printed in-every-box task unfit, whatever its answer.
import { type Told, told } from '../../base/index.ts';
import { colourFaults, stickerFaults } from '../colour-answers.ts';
import { leastCellMm } from '../placing.ts';
import type { Kind } from './solve-kinds.ts';
import type { Box, Place, Printed } from './task.ts';

/** No less in mm than the side of any cell in which a figure is printed, sizes that differ and stickers not counted. */
const CELL_MM = 22;
/** A smaller sticker still gets this much room, in mm, so that a finger finds it. */
const TARGET_MM = 12;

/** Reasons in plain words; `shared` is how many kinds stand in every box. */
export function faultsOf(
  printed: Printed,
  kinds: readonly Kind[],
  shared: number,
): readonly Told[] {
  const { boxes } = printed;
  if (boxes.length < 2) return [told('in-every-box', 'fault.one-box')];
  return [
    ...kinds.flatMap(repeatFaults),
    ...sizeFaults(boxes),
    ...(shared === kinds.length ? [told('in-every-box', 'fault.all-same')] : []),
    ...circleFaults(printed, shared),
    ...answerFaults(printed),
    ...boxes.flatMap((box, index) => placeFaults(box, index, printed)),
  ];
}

function repeatFaults({ figure, counts }: Kind): readonly Told[] {
  return counts.flatMap((count, box) =>
    count > 1
      ? [told('in-every-box', 'fault.repeated', { box: box + 1, count, figure: { figure } })]
      : [],
  );
}

function sizeFaults(boxes: readonly Box[]): readonly Told[] {
  const counts = boxes.map((box) => box.figures.length);
  return new Set(counts).size > 1
    ? [told('in-every-box', 'fault.uneven', { counts: { commas: counts } })]
    : [];
}

/** Circles say how many figures to look for, so that their number must be right. */
function circleFaults({ response, circles = 0 }: Printed, shared: number): readonly Told[] {
  const expected = response === 'sticker' ? shared : 0;
  if (circles === expected) return [];
  if (response !== 'sticker')
    return [told('in-every-box', 'fault.circles-idle', { count: circles })];
  return [told('in-every-box', 'fault.circles', { count: circles, shared })];
}

function answerFaults({ boxes, response, stickerMm }: Printed): readonly Told[] {
  if (response !== 'sticker') return [];
  return [...colourFaults(boxes.flatMap(({ figures }) => figures)), ...stickerFaults(stickerMm)];
}

function placeFaults({ figures, places }: Box, index: number, printed: Printed): readonly Told[] {
  if (!places) return [];
  if (places.length !== figures.length) {
    return [
      told('in-every-box', 'fault.places', {
        box: index + 1,
        count: figures.length,
        places: places.length,
      }),
    ];
  }
  const { stickerMm } = printed;
  const all = printed.boxes.flatMap((box) => box.figures);
  const cellMm = Math.max(CELL_MM, leastCellMm(all));
  const apartMm = stickerMm === undefined ? cellMm : Math.max(stickerMm, TARGET_MM);
  const apart = stickerMm === undefined ? apartAlongSides : apartAllRound;
  const touches = places.some((place, at) =>
    places.slice(0, at).some((earlier) => apart(place, earlier) < apartMm),
  );
  const crosses = places.some(({ x, y }) => Math.min(x, y) < apartMm / 2);
  return [
    ...(touches ? [told('in-every-box', 'fault.touching', { box: index + 1 })] : []),
    ...(crosses ? [told('in-every-box', 'fault.edge', { box: index + 1 })] : []),
  ];
}

/** Corners of figures touch where the corners of their cells do. */
function apartAlongSides(one: Place, other: Place): number {
  return Math.max(Math.abs(one.x - other.x), Math.abs(one.y - other.y));
}

/** Dots have no corners. */
function apartAllRound(one: Place, other: Place): number {
  return Math.sqrt((one.x - other.x) ** 2 + (one.y - other.y) ** 2);
}
