// Reads the pieces off the drawn page of a sheet; knows no activity, only what the scene says.
import type { Language } from '../activities/index.ts';
import {
  type Bounds,
  compose,
  IDENTITY,
  type Path,
  pathBounds,
  type Transform,
  transformPath,
  unionOf,
} from '../base/index.ts';
import { colourName } from '../figures/index.ts';
import { type Group, INK, type SceneNode, type Shape, WHITE } from '../page/index.ts';
import { type Sheet, taskGroups } from '../sheets/index.ts';
import { boundsOf, crossed, isWithin, scaleOf } from './bounds.ts';
import { byHandWords } from './catalogue.ts';
import { pathKind } from './path-kind.ts';
import type { Piece } from './piece.ts';

/** So many straight strokes along the edges of a group are one dashed box. */
const LEAST_DASHES = 8;
/** A filled circle up to this diameter in mm is a dot to join, not a place. */
const MOST_DOT_MM = 4;
/** A figure may reach so far over what clips it before it counts as cut off, in mm. */
const CLIP_SLACK_MM = 0.5;

interface Place {
  readonly language: Language;
  readonly transform: Transform;
  readonly clip?: Bounds;
  readonly task?: number;
}

/** In the order in which they are drawn, which is the order of reading within each task. */
export function readPieces(sheet: Sheet, language: Language = 'en'): readonly Piece[] {
  let task = -1;
  return taskGroups(sheet, false, language).flatMap((group) => {
    const isTask = group.role === 'task-place';
    if (isTask) task += 1;
    return piecesIn(group, { language, transform: IDENTITY, ...(isTask ? { task } : {}) });
  });
}

function piecesIn(node: SceneNode, place: Place): readonly Piece[] {
  if (node.kind === 'shape') return shapePieces(node, place);
  if (node.kind === 'text') {
    const bounds = boundsOf(node, place.transform);
    const name = byHandWords(place.language).written(node.text);
    return [{ kind: 'named', name, bounds, ...drawn(node, place) }];
  }
  const inner = placeIn(node, place);
  const whole = boundsOf(node, place.transform);
  if (node.shows) return [figurePiece(node, whole, place)];
  if (isNamedLeaf(node)) {
    return [{ kind: 'named', name: node.alt ?? '', bounds: whole, ...drawn(node, place) }];
  }
  const dashes = dashesIn(node);
  const rest = node.children.filter((child) => !dashes.includes(child));
  const pieces = rest.flatMap((child) => piecesIn(child, inner));
  return dashes.length === 0 ? pieces : [dashedBox(node, dashes, inner, place), ...pieces];
}

function placeIn(node: Group, place: Place): Place {
  const transform = compose(place.transform, node.transform ?? IDENTITY);
  const own = node.clip && pathBounds(transformPath(node.clip, transform));
  const clip = own && place.clip ? crossed(own, place.clip) : (own ?? place.clip);
  return { ...place, transform, ...(clip ? { clip } : {}) };
}

function drawn(node: SceneNode, { transform, task }: Place) {
  return { node, transform, isDashed: false, ...(task === undefined ? {} : { task }) };
}

/** A figure of which only the middle shows is a patch of its colour. */
function figurePiece(node: Group, whole: Bounds, place: Place): Piece {
  const { clip } = place;
  const figure = node.shows ?? {};
  if (!clip || isWithin(whole, clip, CLIP_SLACK_MM)) {
    return { kind: 'figure', figure, bounds: whole, ...drawn(node, place) };
  }
  const bounds = crossed(whole, clip);
  const patch: Group = {
    kind: 'group',
    children: [node],
    clip: boxAt(bounds, place.transform),
  };
  const colour = colourName(figure.colour ?? 'black', place.language);
  const name = byHandWords(place.language).patch(colour);
  return { kind: 'figure', figure, name, bounds, ...drawn(patch, place) };
}

/** The bounds as a path in the coordinates that `transform` brings to the page. */
function boxAt({ left, top, right, bottom }: Bounds, transform: Transform): Path {
  const scale = scaleOf(transform);
  const x = (at: number) => (at - transform[4]) / scale;
  const y = (at: number) => (at - transform[5]) / scale;
  return [
    ['M', x(left), y(top)],
    ['L', x(right), y(top)],
    ['L', x(right), y(bottom)],
    ['L', x(left), y(bottom)],
    ['Z'],
  ];
}

/** A group that says what it is and draws no figure, such as a ring that the key shows. */
function isNamedLeaf(node: Group): boolean {
  const isNamed = node.alt !== undefined && node.role !== 'task' && node.role !== 'circle';
  return isNamed && !drawsFigure(node);
}

function drawsFigure(node: SceneNode): boolean {
  if (node.kind !== 'group') return false;
  return node.shows !== undefined || node.children.some(drawsFigure);
}

function dashesIn({ children }: Group): readonly SceneNode[] {
  const strokes = children.filter(isUprightStroke);
  return strokes.length < LEAST_DASHES ? [] : strokes;
}

function isUprightStroke(node: SceneNode): boolean {
  if (node.kind !== 'shape' || pathKind(node.path) !== 'line') return false;
  const { left, top, right, bottom } = pathBounds(node.path);
  return left === right || top === bottom;
}

function dashedBox(node: Group, dashes: readonly SceneNode[], inner: Place, place: Place): Piece {
  const paths = dashes.map((dash) => pathsBounds(dash, inner.transform));
  const dashed: Group = { ...node, children: dashes };
  return { kind: 'box', bounds: unionOf(paths), ...drawn(dashed, place), isDashed: true };
}

function pathsBounds(node: SceneNode, transform: Transform): Bounds {
  return node.kind === 'shape'
    ? pathBounds(transformPath(node.path, transform))
    : boundsOf(node, transform);
}

/** Shapes without a stroke are ground, nothing to draw by hand, unless they are small dots or filled with ink. */
function shapePieces(shape: Shape, place: Place): readonly Piece[] {
  const kind = pathKind(shape.path);
  const middle = pathBounds(transformPath(shape.path, place.transform));
  const whole = boundsOf(shape, place.transform);
  const isDashed = shape.stroke?.dashMm !== undefined;
  const base = { ...drawn(shape, place), isDashed };
  const isFilled = shape.fill !== undefined && shape.fill !== WHITE;
  if (kind === 'circle' && isFilled && whole.right - whole.left <= MOST_DOT_MM) {
    return [{ kind: 'dot', bounds: whole, ...base }];
  }
  if (shape.stroke === undefined)
    return isInk(shape) ? [{ kind: 'free', bounds: whole, ...base }] : [];
  switch (kind) {
    case 'line':
    case 'rising-line':
      return [{ kind: 'line', bounds: middle, rises: kind === 'rising-line', ...base }];
    case 'box':
      return [{ kind: 'box', bounds: middle, ...base }];
    case 'circle':
      return [{ kind: 'ring', bounds: whole, ...base }];
    case 'other':
      return [{ kind: 'free', bounds: whole, ...base }];
  }
}

function isInk({ fill }: Shape): boolean {
  return fill === INK;
}
