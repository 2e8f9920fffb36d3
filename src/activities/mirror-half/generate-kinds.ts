// The different figures of a task: forms that their mirror image looks like, or directions that it turns round.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  attributesOf,
  drawCounts,
  drawForms,
  drawSizes,
  type Figure,
  type FormId,
  formsKey,
  formsOf,
  mirrorTurnDeg,
  mostForms,
  mostValues,
  sameFigure,
  type Texture,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { coloursOf, drawColours } from '../../palette/index.ts';
import type { Axis, MirrorContent } from './task.ts';

/** More sizes than two leave the smallest too small in a grid. */
const MOST_SIZES = 2;
/** Textures that a mirror leaves as they are: slanted ones lean the other way, zigzags and waves are alike. */
const TEXTURES: readonly Texture[] = [
  'upright-stripes',
  'level-stripes',
  'spots',
  'checks',
  'bricks',
];
const TEXTURED: readonly FormId[] = ['circle', 'square', 'oval', 'hexagon'];

/** Which values the figures take of the first, second and third attribute, so that all differ. */
const MIXES: readonly (readonly number[])[] = [
  [0, 0, 0],
  [1, 1, 1],
  [0, 1, 0],
  [1, 0, 1],
];

/** The figure in a mirror that stands upright, or lies level. */
export function mirrored(figure: Figure, line: 'upright' | 'level'): Figure {
  const more = line === 'upright' ? 0 : 180;
  const turn = (more + 360 - (figure.turn ?? 0)) % 360;
  return { ...figure, turn, mirrored: !(figure.mirrored ?? false) };
}

function linesOf(axis: Axis): readonly ('upright' | 'level')[] {
  return axis === 'both' ? ['upright', 'level'] : [axis];
}

const symmetric = new Map<string, readonly FormId[]>();

/** The forms of a content that the mirrors of the task leave as they look. */
function symmetricForms(content: MirrorContent, axis: Axis): readonly FormId[] {
  const key = `${formsKey(content)} ${axis}`;
  const known = symmetric.get(key);
  if (known) return known;
  const forms = formsOf(content).filter((form) =>
    linesOf(axis).every((line) => sameFigure({ form }, mirrored({ form }, line))),
  );
  symmetric.set(key, forms);
  return forms;
}

const known = new Map<string, number>();

/** How many different figures a task can have at most; 0 where none look the same in the mirror. */
export function mostKinds(content: MirrorContent, axis: Axis, style: PrintStyle): number {
  const key = `${formsKey(content)} ${axis} ${coloursOf(style)}`;
  const most = known.get(key) ?? countKinds(content, axis, style);
  known.set(key, most);
  return most;
}

function countKinds(content: MirrorContent, axis: Axis, style: PrintStyle): number {
  const attributes = attributesOf(content);
  const values = attributes.map((attribute) => mostOf(content, attribute, axis, style));
  const [first = 0] = values;
  if (attributes.length === 1) return Math.min(MIXES.length, first);
  return Math.min(...values) >= 2 ? MIXES.length : 0;
}

function mostOf(
  content: MirrorContent,
  attribute: Attribute,
  axis: Axis,
  style: PrintStyle,
): number {
  switch (attribute) {
    case 'form':
      return mostForms(symmetricForms(content, axis));
    case 'fill':
      return TEXTURES.length;
    case 'size':
      return MOST_SIZES;
    default:
      return mostValues(content, attribute, style);
  }
}

/** `count` figures, at most `mostKinds`, every two fairly different. */
export function drawKinds(
  content: MirrorContent,
  axis: Axis,
  count: number,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  const attributes = attributesOf(content);
  const isSingle = attributes.length === 1;
  const base = attributes.includes('form') ? {} : drawBase(content, axis, random);
  const axes = attributes.map((attribute) =>
    drawValues(content, attribute, isSingle ? count : Math.min(2, count), { axis, random, style }),
  );
  return Array.from({ length: count }, (_, kind) => {
    const mix = isSingle ? [kind] : (MIXES[kind] ?? []);
    return Object.assign(
      {},
      base,
      ...axes.map((values, index) => values[mix[index] ?? 0] ?? values[0]),
    );
  });
}

/** The form that all figures share. */
function drawBase(content: MirrorContent, axis: Axis, random: Random): Figure {
  const attributes = attributesOf(content);
  if (attributes.includes('count')) return { form: 'dots', layout: 'row' };
  if (attributes.includes('turn')) return { form: random.pick(pointingUp(content)) };
  if (attributes.includes('fill')) return { form: random.pick(TEXTURED) };
  return { form: random.pick(symmetricForms(content, axis)) };
}

/** Shapes that point up or stand as they come; a crescent lies on its side. */
function pointingUp(content: MirrorContent): readonly FormId[] {
  return formsOf(content).filter((form) => mirrorTurnDeg(form) === 0);
}

interface Ways {
  readonly axis: Axis;
  readonly random: Random;
  readonly style: PrintStyle;
}

function drawValues(
  content: MirrorContent,
  attribute: Attribute,
  count: number,
  { axis, random, style }: Ways,
): readonly Partial<Figure>[] {
  switch (attribute) {
    case 'colour':
      return drawColours(random, count, style.print, coloursOf(style)).map((colour) => ({
        colour,
      }));
    case 'form':
      return drawForms(random, symmetricForms(content, axis), count, style.letters).map((form) => ({
        form,
      }));
    case 'size':
      return drawSizes(random, count).map((size) => ({ size }));
    case 'turn':
      return drawTurns(axis, count, random).map((turn) => ({ turn }));
    case 'count':
      return drawCounts(random, count).map((dots) => ({ count: dots }));
    case 'fill':
      return random.sample(TEXTURES, count).map((fill) => ({ fill }));
  }
}

/** Quarter turns, of which the first is one that a mirror of the task turns round, whatever the form. */
function drawTurns(axis: Axis, count: number, random: Random): readonly number[] {
  const all = random.shuffle([0, 90, 180, 270]);
  const across = axis === 'level' ? 0 : 90;
  const first = all.find((turn) => turn % 180 === across) ?? across;
  return [first, ...all.filter((turn) => turn !== first)].slice(0, count);
}
