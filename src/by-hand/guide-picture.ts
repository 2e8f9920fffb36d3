// The small picture of the page on its guide: the numbers of the list on it, distances along its edges.
import { circlePath, compose, moveBy, rectanglePath, scaleBy } from '../base/index.ts';
import {
  FAINT_INK,
  FINE_MM,
  filled,
  type Group,
  group,
  INK,
  line,
  QUIET_INK,
  type SceneNode,
  stroked,
  text,
  textWidthMm,
  WHITE,
} from '../page/index.ts';
import { drawLaid } from './draw-laid.ts';
import type { Guide } from './guide.ts';

const NUMBER_EM_MM = 2.8;
const NUMBER_RING_MM = 2.2;
const NUMBER_BASELINE_EMS = 0.32;
const EDGE_EM_MM = 2.4;
const TICK_MM = 1.5;
/** Beside the picture for the distances, in mm. */
export const EDGE_ROOM_MM = 8;
const LABEL_GAP_MM = 0.8;

/** From (0, 0): the edges with their distances, then the page at `scale`. */
export function guidePicture(guide: Guide, scale: number): Group {
  const { page, laid, folds } = guide;
  const made = drawLaid(laid, folds, page);
  const frame = rectanglePath(0, 0, page.widthMm, page.heightMm);
  const small: Group = {
    ...group('picture', [stroked(frame, { colour: FAINT_INK, widthMm: FINE_MM / scale }), made]),
    transform: compose(moveBy(EDGE_ROOM_MM, EDGE_ROOM_MM), scaleBy(scale)),
  };
  const edges = guide.copied ? [] : edgeMarks(guide, scale);
  return group('how-it-looks', [small, ...edges, ...numbers(guide, scale)]);
}

/** On a dot in its middle, of what is drawn at its upper left corner, so that it can still be seen. */
function numbers({ placements }: Guide, scale: number): readonly SceneNode[] {
  return placements
    .filter(({ inside }) => inside === undefined)
    .map(({ number, xMm, yMm, widthMm, heightMm, isSticker }) => {
      const [across, down] = isSticker ? [0, 0] : [widthMm / 2, heightMm / 2];
      const x = EDGE_ROOM_MM + (xMm - across) * scale;
      const y = EDGE_ROOM_MM + (yMm - down) * scale;
      return numberAt(number, x, y);
    });
}

function numberAt(number: number, x: number, y: number): SceneNode {
  const ring = filled(circlePath(x, y, NUMBER_RING_MM), WHITE, {
    colour: INK,
    widthMm: FINE_MM / 2,
  });
  const baseline = y + NUMBER_BASELINE_EMS * NUMBER_EM_MM;
  const words = text(String(number), x, baseline, NUMBER_EM_MM, {
    anchor: 'middle',
    weight: 'bold',
  });
  return group('number', [ring, words]);
}

/** Each distance that is used, once, where its number does not run into the one before. */
function edgeMarks(guide: Guide, scale: number): readonly SceneNode[] {
  const across = distances(guide, 'x');
  const down = distances(guide, 'y');
  return [
    ...acrossMarks(across, scale),
    ...spaced(down, scale, () => EDGE_EM_MM).flatMap((mm) => {
      const y = EDGE_ROOM_MM + mm * scale;
      const edge = EDGE_ROOM_MM;
      const baseline = y + NUMBER_BASELINE_EMS * EDGE_EM_MM;
      return [
        line(edge - TICK_MM, y, edge, y, { colour: QUIET_INK, widthMm: FINE_MM / 2 }),
        text(String(mm), edge - TICK_MM - LABEL_GAP_MM, baseline, EDGE_EM_MM, {
          anchor: 'end',
          colour: QUIET_INK,
        }),
      ];
    }),
  ];
}

function acrossMarks(across: readonly number[], scale: number): readonly SceneNode[] {
  const widthOf = (mm: number) => textWidthMm(String(mm), EDGE_EM_MM);
  return spaced(across, scale, widthOf).flatMap((mm) => {
    const x = EDGE_ROOM_MM + mm * scale;
    const edge = EDGE_ROOM_MM;
    return [
      line(x, edge - TICK_MM, x, edge, { colour: QUIET_INK, widthMm: FINE_MM / 2 }),
      text(String(mm), x, edge - TICK_MM - LABEL_GAP_MM, EDGE_EM_MM, {
        anchor: 'middle',
        colour: QUIET_INK,
      }),
    ];
  });
}

function distances({ placements, boxes, lines }: Guide, along: 'x' | 'y'): readonly number[] {
  const isX = along === 'x';
  const marked = placements.filter(({ inside, isPatch }) => inside === undefined && !isPatch);
  const all = [
    ...marked.map(({ xMm, yMm }) => (isX ? xMm : yMm)),
    ...boxes.flatMap(({ leftMm, topMm, widthMm, heightMm }) =>
      isX ? [leftMm, leftMm + widthMm] : [topMm, topMm + heightMm],
    ),
    ...lines.flatMap(({ from, to }) => (isX ? [from[0], to[0]] : [from[1], to[1]])),
  ];
  return [...new Set(all)].sort((one, other) => one - other);
}

function spaced(
  all: readonly number[],
  scale: number,
  sizeOf: (mm: number) => number,
): readonly number[] {
  const kept: number[] = [];
  for (const mm of all) {
    const last = kept[kept.length - 1];
    const needs = last === undefined ? 0 : (sizeOf(mm) + sizeOf(last)) / 2 + LABEL_GAP_MM;
    if (last === undefined || (mm - last) * scale >= needs) kept.push(mm);
  }
  return kept;
}
