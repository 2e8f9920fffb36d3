// How two figures differ to the eye, each difference measured, and whether a child can fairly see it.
import { FAIR_DE00, worstDifferenceDe00 } from '../palette/index.ts';
import { liesAlike } from './dots.ts';
import { type Figure, formOf, layoutOf } from './figure.ts';
import { INSIDE_FLOOR, insideShare } from './insides.ts';
import { areLookAlikes, floorOf, LINE_FLOOR } from './likeness.ts';
import {
  isDrawnLike,
  outlineShare,
  printedSpread,
  turnedOutlineShare,
} from './outline-distance.ts';
import { isOwnColoured, paintOf } from './paint.ts';
import { plainest, stanceOf, symmetryTurnDeg } from './symmetry.ts';

/** What can be seen to differ between two figures; a field is absent where they look the same. */
export interface Differences {
  /** Least CIEDE2000 difference of their colours to any sight that the palette serves; ink counts as black. */
  readonly colourDe00?: number;
  /**
   * One is solid, the other outlined or textured, or their textures differ; or one is a picture in its own
   * colours, the other not.
   */
  readonly fill?: true;
  /** Share of their outlines that they do not have in common as they lie, 0 to 1. */
  readonly outlineShare?: number;
  /** The same once they may be mirrored and turned by quarters; only where the forms differ. */
  readonly turnedOutlineShare?: number;
  /**
   * Share of the insides of two pictures in their own colours that are told apart (`insideShare`); only where one is of a
   * family's own and the outlines are too alike to tell.
   */
  readonly insideShare?: number;
  /** The least turn that brings one to the other, in degrees, above 0 to 180; only for one form. */
  readonly turnDeg?: number;
  /** They are mirror images that no turn brings together; only for one form. */
  readonly mirrored?: true;
  /** Length of the bigger over that of the smaller, above 1. */
  readonly sizeRatio?: number;
  /** More dots over fewer, above 1. */
  readonly countRatio?: number;
  /** Diameter of the bigger dots over that of the smaller, above 1; their number may be the same. */
  readonly dotRatio?: number;
  /** As many dots that lie otherwise. */
  readonly layout?: true;
}

/** Outlines that share all but this are the same to the eye, such as a dot and a circle as small. */
export const SAME_SHARE = 0.05;

/**
 * Least turn that is told apart at a glance: oblique from upright, half a right angle. Finer ones are
 * left out, since slope is what children of four fail in first (Corballis & Zalik 1977, J. Exp. Child
 * Psychol. 24, 516).
 */
export const TURN_FLOOR_DEG = 45;

/**
 * Least ratio of lengths: its square, the ratio of areas, is 1.69, where four-year-olds are about 80 %
 * right in number (Halberda & Feigenson 2008); area is told apart more finely (Odic et al. 2013).
 */
export const SIZE_RATIO_FLOOR = 1.3;

/** Least ratio of counts, 5 to 6: the finest that children of five tell apart (Halberda & Feigenson 2008). */
export const COUNT_RATIO_FLOOR = 1.2;

/** All that can be seen to differ between two figures, colours as in coloured print. */
export function differencesOf(one: Figure, other: Figure): Differences {
  return {
    ...paintDifferences(one, other),
    ...shapeDifferences(plainest(one), plainest(other)),
  };
}

function shapeDifferences(one: Figure, other: Figure): Differences {
  if (formOf(one) !== formOf(other)) return formDifferences(one, other);
  return formOf(one) === 'dots' ? dotDifferences(one, other) : stanceDifferences(one, other);
}

/** Whether two figures print alike: what is absent counts as its default, and unseen turns do not count. */
export function sameFigure(one: Figure, other: Figure): boolean {
  // Paint first, since outlines take longer to compare.
  if (Object.keys(paintDifferences(one, other)).length > 0) return false;
  const [plain, otherPlain] = [plainest(one), plainest(other)];
  const isOther = formOf(plain) !== formOf(otherPlain) && outlineShare(one, other) > SAME_SHARE;
  return !isOther && Object.keys(shapeDifferences(plain, otherPlain)).length === 0;
}

/**
 * Whether at least one difference of two figures is large enough for a child of three to five to see.
 * Mirror images of one form never are, nor forms that differ only once mirrored or turned, such as b and d.
 */
export function fairlyDifferent(one: Figure, other: Figure): boolean {
  const paint = paintDifferences(one, other);
  if (paint.fill === true || (paint.colourDe00 ?? 0) >= FAIR_DE00) return true;
  const found = shapeDifferences(plainest(one), plainest(other));
  return (
    (found.sizeRatio ?? 1) >= SIZE_RATIO_FLOOR ||
    (found.countRatio ?? 1) >= COUNT_RATIO_FLOOR ||
    (found.layout === true && (found.outlineShare ?? 0) >= LINE_FLOOR) ||
    (found.insideShare ?? 0) >= INSIDE_FLOOR ||
    hasFairOutline(one, other, found)
  );
}

function hasFairOutline(one: Figure, other: Figure, found: Differences): boolean {
  const [form, otherForm] = [formOf(plainest(one)), formOf(plainest(other))];
  if (form === otherForm) {
    const isFarApart = (found.outlineShare ?? 0) >= floorOf(form, otherForm);
    return isFarApart && (found.turnDeg ?? 0) >= TURN_FLOOR_DEG;
  }
  const isFarApart = (found.turnedOutlineShare ?? 0) >= floorOf(form, otherForm);
  return isFarApart && !areLookAlikes(form, otherForm) && !areBothOnCorner(one, other);
}

/** A diamond and a square on its corner, which children call a diamond. */
function areBothOnCorner(one: Figure, other: Figure): boolean {
  const isOnCorner = (figure: Figure) => {
    const { turn } = stanceOf(figure);
    return formOf(figure) === 'square' && turn > 25 && turn < 65;
  };
  const isDiamond = (figure: Figure) => formOf(figure) === 'diamond';
  return (isOnCorner(one) && isDiamond(other)) || (isOnCorner(other) && isDiamond(one));
}

function paintDifferences(one: Figure, other: Figure): Differences {
  const [own, otherOwn] = [isOwnColoured(one), isOwnColoured(other)];
  if (own || otherOwn) return own === otherOwn ? {} : { fill: true };
  const [paint, otherPaint] = [paintOf(one), paintOf(other)];
  return {
    ...(paint.colour === otherPaint.colour
      ? {}
      : { colourDe00: worstDifferenceDe00(paint.colour, otherPaint.colour) }),
    ...(paint.fill === otherPaint.fill || isDrawnLike(one, other) ? {} : { fill: true }),
  };
}

function sizeDifference(ratio: number): Differences {
  const rounded = Math.round(Math.max(ratio, 1 / ratio) * 100) / 100;
  return rounded === 1 ? {} : { sizeRatio: rounded };
}

/** Two figures of one form: how they lie, and how big they are. */
function stanceDifferences(one: Figure, other: Figure): Differences {
  const [stance, otherStance] = [stanceOf(one), stanceOf(other)];
  const period = symmetryTurnDeg(formOf(one));
  const apart = Math.abs(stance.turn - otherStance.turn);
  const turnDeg = Math.min(apart, period - apart);
  const mirrored = stance.mirrored !== otherStance.mirrored;
  return {
    ...sizeDifference((one.size ?? 1) / (other.size ?? 1)),
    ...(mirrored ? { mirrored: true } : turnDeg > 0 ? { turnDeg } : {}),
    ...(mirrored || turnDeg > 0 ? { outlineShare: outlineShare(one, other) } : {}),
  };
}

/** Two figures of different forms, which may still print alike. */
function formDifferences(one: Figure, other: Figure): Differences {
  const share = outlineShare(one, other);
  if (share <= SAME_SHARE) {
    return {
      ...sizeDifference(printedSpread(one) / printedSpread(other)),
      ...insideDifference(one, other, share),
    };
  }
  const turned = turnedOutlineShare(one, other);
  return {
    ...sizeDifference((one.size ?? 1) / (other.size ?? 1)),
    outlineShare: share,
    turnedOutlineShare: turned,
    ...insideDifference(one, other, turned),
  };
}

/** What two pictures in their own colours show inside outlines that do not tell them apart. */
function insideDifference(one: Figure, other: Figure, apart: number): Differences {
  const [form, otherForm] = [formOf(one), formOf(other)];
  if (!isOwnColoured(one) || !isOwnColoured(other)) return {};
  if (apart >= floorOf(form, otherForm)) return {};
  const share = insideShare(form, otherForm);
  return share <= SAME_SHARE ? {} : { insideShare: share };
}

/** Two quantities of dots: how many, then how they lie. */
function dotDifferences(one: Figure, other: Figure): Differences {
  const dots = sizeDifference((one.dotSize ?? 1) / (other.dotSize ?? 1)).sizeRatio;
  const size: Differences = {
    ...sizeDifference((one.size ?? 1) / (other.size ?? 1)),
    ...(dots === undefined ? {} : { dotRatio: dots }),
  };
  const [count, otherCount] = [one.count ?? 1, other.count ?? 1];
  if (count !== otherCount) {
    const ratio = Math.max(count, otherCount) / Math.min(count, otherCount);
    return { ...size, countRatio: Math.round(ratio * 100) / 100 };
  }
  if (liesAlike(one, other)) return size;
  const way =
    layoutOf(one) === layoutOf(other) ? stanceDifferences(one, other) : { layout: true as const };
  return { ...size, ...way, outlineShare: outlineShare(one, other) };
}
