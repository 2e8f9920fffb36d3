// Where the starts, the field of lines and the ends stand on paper.
import {
  compose,
  moveBy,
  type Path,
  scaleBy,
  type Transform,
  transformPath,
  transformPoint,
} from '../../base/index.ts';
import { type Area, centredIn } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { type Printed, pathOf } from './task.ts';

/** Blank between two cells, and between a cell and its line; in mm. */
const GAP_MM = 4;
const CLEAR_MM = 1.5;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.25;

export interface PagePlan {
  /** Cells of the starts and of the ends, in their order. */
  readonly starts: readonly Area[];
  readonly ends: readonly Area[];
  /** The printed lines, in place. */
  readonly lines: readonly Path[];
  /** Print over least print, 1 or more. */
  readonly scale: number;
}

/** The least size of a task, the room for its starts included. */
export function leastSize(printed: Printed): Size {
  const { along, across } = lengthsOf(printed);
  return printed.direction === 'down'
    ? { widthMm: across, heightMm: along }
    : { widthMm: along, heightMm: across };
}

function lengthsOf({ starts, laneMm, lengthMm }: Printed) {
  return {
    along: lengthMm + 2 * (laneMm - GAP_MM + CLEAR_MM),
    across: starts.length * laneMm - GAP_MM,
  };
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size): PagePlan {
  const least = leastSize(printed);
  const scale = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  const whole = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const { left, top } = centredIn(whole, least.widthMm * scale, least.heightMm * scale);
  const place = compose(moveBy(left, top), compose(scaleBy(scale), placing(printed)));
  const cellMm = printed.laneMm - GAP_MM;
  const cellsAt = (along: number) =>
    printed.starts.map((_, number) => {
      const { x, y } = transformPoint(place, along, (number + 0.5) * printed.laneMm);
      return centredIn({ left: x, top: y, width: 0, height: 0 }, cellMm * scale);
    });
  const besideMm = CLEAR_MM + cellMm / 2;
  return {
    starts: cellsAt(-besideMm),
    ends: cellsAt(printed.lengthMm + besideMm),
    lines: printed.lines.map((line) => transformPath(pathOf(line), place)),
    scale,
  };
}

/** From along and across to right and down at the least print, or to down and right where lines run down. */
function placing({ direction, laneMm }: Printed): Transform {
  const [along, across] = [laneMm - GAP_MM + CLEAR_MM, -GAP_MM / 2];
  return direction === 'down' ? [0, 1, 1, 0, across, along] : [1, 0, 0, 1, along, across];
}
