// Draws the head of a row or column: the one thing that its figures share, and nothing of what they do not.
import { pathBounds, rectanglePath } from '../../base/index.ts';
import {
  colourName,
  type Figure,
  figureName,
  formOf,
  isSign,
  outlineOf,
} from '../../figures/index.ts';
import {
  type Area,
  centreOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  insetArea,
  LINE_MM,
  type PrintStyle,
  stroked,
  traced,
} from '../../page/index.ts';
import { sideInCard } from '../placing.ts';
import { printedWords } from '../printed-words.ts';
import type { Head, Printed } from './task.ts';

const CORNER_MM = 3;
const INSET_MM = 1;
/** What shows a size where figures have forms of their own: no form that could stand in a table. */
const SIZED: Figure = { form: 'picture-teddy', fill: 'outline' };

/** How heads are drawn. */
interface Ways {
  readonly figureMm: number;
  readonly style: PrintStyle;
  /** Whether all figures of the task are circles, so that a circle shows nothing but a size. */
  readonly areCircles: boolean;
}

export function drawHeads(
  heads: readonly Head[],
  areas: readonly Area[],
  printed: Printed,
  figureMm: number,
  style: PrintStyle,
): readonly Group[] {
  const ways = { figureMm, style, areCircles: areAllCircles(printed) };
  return heads.flatMap((head, place) => {
    const area = areas[place];
    return area ? [drawHead(head, insetArea(area, INSET_MM), ways)] : [];
  });
}

function areAllCircles({ rows, loose = [], rowHeads = [], columnHeads = [] }: Printed): boolean {
  return [...rows.flat(), ...loose, ...rowHeads, ...columnHeads].every(
    (figure) => figure === null || formOf(figure) === 'circle',
  );
}

function drawHead(head: Head, area: Area, ways: Ways): Group {
  return traced(head, drawShown(head, area, ways));
}

function drawShown(head: Head, area: Area, ways: Ways): Group {
  const { form, colour, size } = head;
  if (colour !== undefined && form === undefined && size === undefined) {
    return drawPainted(head, area, ways);
  }
  const { left, top, width, height } = area;
  const { x, y } = centreOf(area);
  const shown = shownFor(head, ways);
  const sideMm = sideInCard(shown, ways.figureMm);
  return group('head', [
    stroked(rectanglePath(left, top, width, height, CORNER_MM), {
      colour: FAINT_INK,
      widthMm: FINE_MM,
    }),
    {
      ...drawFigure(shown, x, y, sideMm, ways.style),
      alt: headName(head, ways.style),
    },
  ]);
}

/** Without a colour a figure is an outline, so that no head shows one that it does not mean. */
function shownFor(head: Head, { areCircles }: Ways): Figure {
  const { form, colour, size, fill } = head;
  if (form === undefined && size !== undefined) {
    if (areCircles) return { size, fill: 'outline' };
    return { ...SIZED, size, ...(colour ? { colour, fill: 'solid' } : {}) };
  }
  const isLine = isSign(formOf(head)) || form === 'dots';
  return isLine || colour !== undefined || fill !== undefined ? head : { ...head, fill: 'outline' };
}

/** A colour alone paints the whole head: a blot in a form would be read as that form. */
function drawPainted(head: Head, area: Area, { style }: Ways): Group {
  const { left, top, width, height } = area;
  const { x, y } = centreOf(area);
  const { ink: _ink, ...inFull } = style;
  const square: Figure = { form: 'square', colour: head.colour };
  const bounds = pathBounds(outlineOf({ form: 'square' }).path);
  // So large that the outline of the square is cut away with its edge.
  const sideMm = (Math.max(width, height) + 2 * LINE_MM + 1) / (bounds.right - bounds.left);
  const frame = rectanglePath(left, top, width, height, CORNER_MM);
  return group(
    'head',
    [
      { kind: 'group', clip: frame, children: [drawFigure(square, x, y, sideMm, inFull)] },
      stroked(frame, { widthMm: LINE_MM }),
    ],
    headName(head, style),
  );
}

/** What a head is called: the one thing that it shows. */
function headName(head: Head, { language }: PrintStyle): string {
  const { form, colour, size, count } = head;
  if (form !== undefined || count !== undefined) return figureName(head, language);
  const name = colour === undefined ? '' : colourName(colour, language);
  if (size === undefined) return name;
  const { thatSize, thatSizeIn } = printedWords(language);
  return name === '' ? thatSize : thatSizeIn(name);
}
