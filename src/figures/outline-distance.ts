// How different two outlines look: the share of their joint area that they do not share, best aligned.
import { bestAgreement, windowsOf } from './alignment.ts';
import { type Figure, formOf, layoutOf } from './figure.ts';
import { type FormId, isPicture, isShape } from './form-names.ts';
import { type TabledShares, tabledShares } from './likeness-table.ts';
import { type Outline, outlineOf } from './outline.ts';
import { paintOf } from './paint.ts';
import { overlapShare, type Raster, rasterOf, spreadOf, WHOLE_CELL } from './raster.ts';
import { SIGN_WIDTH_SHARE } from './sign-lines.ts';
import { plainest, type Stance, stanceOf } from './symmetry.ts';

/** Forgotten when this many pairs are known, so that a hostile file cannot fill the memory. */
const MOST_KNOWN = 20_000;

const rasters = new Map<string, readonly Raster[]>();
const shares = new Map<string, number>();
const turnedShares = new Map<string, number>();

/**
 * 1 − common area / joint area of the two printed outlines, each scaled to the same spread about its
 * middle, then moved and scaled to agree best; not turned. 0 (alike) to 1, rounded to 0.01; colour, fill
 * and size play no part.
 */
export function outlineShare(one: Figure, other: Figure): number {
  return tabledOf(one, other)?.plain ?? measureOutlineShare(one, other);
}

/** `outlineShare` without the help of the table. */
export function measureOutlineShare(one: Figure, other: Figure): number {
  const asLines = isDrawnLike(one, other);
  const [first, second] = [viewOf(one, asLines), viewOf(other, asLines)].sort(byKey);
  if (!first || !second || first.key === second.key) return 0;
  const key = `${first.key} ${second.key}`;
  const known = shares.get(key);
  if (known !== undefined) return known;
  const [fixed, moved] = [rastersOf(first), rastersOf(second)];
  const overlap = bestAgreement(fixed, moved, overlapShare);
  const share = Math.round(100 * (1 - overlap)) / 100;
  if (shares.size >= MOST_KNOWN) shares.clear();
  shares.set(key, share);
  return share;
}

/** Whether one is a shape in outline and the other a thing of lines, so that its outline counts as a line. */
export function isDrawnLike(one: Figure, other: Figure): boolean {
  const isHollow = (figure: Figure) =>
    isShape(formOf(figure)) && paintOf(figure).fill === 'outline';
  const isLined = (figure: Figure) => {
    const form = formOf(figure);
    return !isShape(form) && !isPicture(form) && form !== 'dots';
  };
  return (isHollow(one) && isLined(other)) || (isHollow(other) && isLined(one));
}

/** Root-mean-square distance of a figure's ink from its middle as printed, in cell sides. */
export function printedSpread(figure: Figure): number {
  return (
    spreadOf(rasterOf(outlineOf({ ...figure, size: 1 }), WHOLE_CELL)).spread * (figure.size ?? 1)
  );
}

/**
 * The least `outlineShare` when the second figure may also be mirrored and turned by quarters: what is
 * left to tell b from d, n from u, 6 from 9. 0 to 1, the same both ways round.
 */
export function turnedOutlineShare(one: Figure, other: Figure): number {
  return tabledOf(one, other)?.turned ?? measureTurnedShare(one, other);
}

/** `turnedOutlineShare` without the help of the table. */
export function measureTurnedShare(one: Figure, other: Figure): number {
  const [first, second] = [viewOf(one), viewOf(other)];
  const isInOrder = byKey(first, second) <= 0;
  const [fixed, moved] = isInOrder ? [one, other] : [other, one];
  const { turn = 0, mirrored = false } = moved;
  const keys = isInOrder ? `${first.key} ${second.key}` : `${second.key} ${first.key}`;
  const key = `${keys} ${turn} ${mirrored} ${isDrawnLike(one, other)}`;
  const known = turnedShares.get(key);
  if (known !== undefined) return known;
  const views = [0, 90, 180, 270].flatMap((more) =>
    [mirrored, !mirrored].map((isMirrored) => ({
      ...moved,
      turn: (turn + more) % 360,
      mirrored: isMirrored,
    })),
  );
  const share = Math.min(...views.map((view) => measureOutlineShare(fixed, view)));
  if (turnedShares.size >= MOST_KNOWN) turnedShares.clear();
  turnedShares.set(key, share);
  return share;
}

/** What the table knows of two figures: only upright forms are in it. */
function tabledOf(one: Figure, other: Figure): TabledShares | undefined {
  if (isDrawnLike(one, other)) return undefined;
  const [form, otherForm] = [uprightForm(one), uprightForm(other)];
  return form && otherForm && tabledShares(form, otherForm);
}

/** The form of a figure that stands as it is; none where it is turned or mirrored. */
function uprightForm(figure: Figure): FormId | undefined {
  const { turn, mirrored } = stanceOf(figure);
  return turn === 0 && !mirrored ? formOf(figure) : undefined;
}

/** A figure as it is compared: its outline at full size, and a name that is the same for the same outline. */
interface View {
  readonly key: string;
  readonly outline: () => Outline;
}

function viewOf(given: Figure, asLines = false): View {
  const figure = plainest(given);
  const form = formOf(figure);
  const { turn, mirrored } = form === 'dots' ? turnOf(figure) : stanceOf(figure);
  const what =
    form === 'dots' ? `dots-${figure.count}-${layoutOf(figure)}-${figure.dotSize ?? 1}` : form;
  const drawn = asLines && isShape(form) ? { drawn: { widthShare: SIGN_WIDTH_SHARE } } : {};
  return {
    key: `${what}/${turn}${mirrored ? '/mirrored' : ''}${drawn.drawn ? '/line' : ''}`,
    outline: () => ({ ...outlineOf({ ...figure, turn, mirrored, size: 1 }), ...drawn }),
  };
}

function turnOf({ turn = 0, mirrored = false }: Figure): Stance {
  return { turn, mirrored };
}

function byKey(one: View, other: View): number {
  if (one.key === other.key) return 0;
  return one.key < other.key ? -1 : 1;
}

/** The outline as each of the windows shows it. */
function rastersOf({ key, outline: outlineAt }: View): readonly Raster[] {
  const known = rasters.get(key);
  if (known) return known;
  const outline = outlineAt();
  const made = windowsOf(outline).map((window) => rasterOf(outline, window));
  if (rasters.size >= MOST_KNOWN / 10) rasters.clear();
  rasters.set(key, made);
  return made;
}
