// What is in the house: the last count less what was given since, and what a pack lacks of it.
import { PAPER_NAMES, type PaperName } from '../page/index.ts';
import type { ColourName } from '../palette/index.ts';
import type { StickerStock, Stock, StockInView, Tool } from '../records/index.ts';
import { makeSheetOfCode, type PackMaterials, packMaterials, type Sheet } from '../sheets/index.ts';
import { usedBy } from './hand-made.ts';

/** A sticker may be so much smaller than its dot, in mm: common practice, no source. It must not be larger. */
const SMALLER_MM = 4;

/** What a sheet uses, of a house or of any that prints; `undefined` where this version cannot read its code. */
export type MaterialsOf = (code: string, stock?: Stock) => PackMaterials | undefined;

/** A reader that makes each sheet once and keeps it. */
export function materialsReader(): MaterialsOf {
  const known = new Map<string, Sheet | undefined>();
  return (code, stock) => {
    if (!known.has(code)) {
      const made = makeSheetOfCode(code);
      known.set(code, made.ok ? made.value : undefined);
    }
    const sheet = known.get(code);
    if (sheet === undefined) return undefined;
    return stock === undefined ? packMaterials([sheet]) : usedBy([sheet], stock);
  };
}

/**
 * The stock after what was given since the count. Stickers go down to none at the least: what was lacking came from
 * elsewhere. A sheet that was recorded twice was given twice.
 */
export function stockNow({ counted, givenSince }: StockInView, materialsOf: MaterialsOf): Stock {
  const { stickers, crayons, tools, printer, papers } = counted;
  const left = givenSince.reduce(
    (before, code) => taken(before, materialsOf(code, counted)?.stickers ?? []),
    stickers,
  );
  return {
    ...{ stickers: left, crayons, tools },
    ...(printer === undefined ? {} : { printer }),
    ...(papers === undefined ? {} : { papers }),
  };
}

/** The stock after a pack was used up. */
export function stockAfter(stock: Stock, { stickers }: PackMaterials): Stock {
  return { ...stock, stickers: taken(stock.stickers, stickers) };
}

/** How many stickers there are of a colour that fit a dot of this diameter. */
export function fittingCount(
  colour: ColourName,
  diameterMm: number,
  stickers: readonly StickerStock[],
): number {
  const fitting = fittingFor({ colour, diameterMm, count: 0 }, stickers);
  return fitting.reduce((sum, { count }) => sum + count, 0);
}

/** Whether a sticker may lie on a dot. */
export function fitsDot(stickerMm: number, dotMm: number): boolean {
  return stickerMm <= dotMm && stickerMm >= dotMm - SMALLER_MM;
}

/** The largest dots first: with the largest sticker that fits on each, as many as can be are covered. */
export function largestFirst(dots: readonly StickerStock[]): readonly StickerStock[] {
  return [...dots].sort((one, other) => other.diameterMm - one.diameterMm);
}

/** Takes stickers from those that fit their dots, the nearest size first. */
function taken(
  stickers: readonly StickerStock[],
  used: readonly StickerStock[],
): readonly StickerStock[] {
  let left = stickers;
  for (const wanted of largestFirst(used)) {
    let open = wanted.count;
    for (const fitting of fittingFor(wanted, left)) {
      const take = Math.min(open, fitting.count);
      open -= take;
      left = left.map((each) => (each === fitting ? { ...each, count: each.count - take } : each));
    }
  }
  return left;
}

/** Stickers of the colour that are no larger than the dot and hardly smaller, the largest first. */
function fittingFor(
  { colour, diameterMm }: StickerStock,
  stickers: readonly StickerStock[],
): readonly StickerStock[] {
  return stickers
    .filter((each) => each.colour === colour && fitsDot(each.diameterMm, diameterMm))
    .sort((one, other) => other.diameterMm - one.diameterMm);
}

/** What a pack needs and the house has not. */
export interface Lacking {
  /** How many stickers are missing of each kind. */
  readonly stickers: readonly StickerStock[];
  readonly crayons: readonly ColourName[];
  readonly tools: readonly Tool[];
  readonly papers: readonly PaperName[];
}

export function lackingFor(materials: PackMaterials, stock: Stock): Lacking {
  return {
    stickers: lackingStickers(materials.stickers, stock.stickers),
    crayons: materials.crayons.filter((colour) => !stock.crayons.includes(colour)),
    tools: materials.tools.filter((tool) => !stock.tools.includes(tool)),
    papers: papersFor(materials, stock).filter((paper) => !stock.papers?.includes(paper)),
  };
}

/**
 * The papers that sheets take of a house; none where it was not said which it has. Two sheets of A5 come on one A4, to be
 * cut apart, where there is no A5.
 */
export function papersFor({ papers }: PackMaterials, stock: Stock): readonly PaperName[] {
  const { papers: there } = stock;
  if (there === undefined) return [];
  const isHalved = !there.includes('A5') && there.includes('A4');
  const taken = papers.map((paper) => (paper === 'A5' && isHalved ? 'A4' : paper));
  return PAPER_NAMES.filter((paper) => taken.includes(paper));
}

/** Whether what one serves all sheets, and no colour or response can make up for, is there. */
export function isLaidOut(materials: PackMaterials, stock: Stock): boolean {
  const { tools, papers } = lackingFor(materials, stock);
  return tools.length + papers.length === 0;
}

function lackingStickers(
  needed: readonly StickerStock[],
  stickers: readonly StickerStock[],
): readonly StickerStock[] {
  return stickerUses(needed, stickers).flatMap(({ has, ...dots }) =>
    has >= dots.count ? [] : [{ ...dots, count: dots.count - has }],
  );
}

/** Dots of one colour and size, and how many stickers there are for them. */
export interface StickerUse extends StickerStock {
  /** Stickers that fit and that no larger dot of the pack takes. */
  readonly has: number;
}

/** In the order of `needed`; each sticker counts once, however many kinds of dots it would fit. */
export function stickerUses(
  needed: readonly StickerStock[],
  stickers: readonly StickerStock[],
): readonly StickerUse[] {
  let left = stickers;
  const has = new Map<StickerStock, number>();
  for (const wanted of largestFirst(needed)) {
    has.set(wanted, fittingCount(wanted.colour, wanted.diameterMm, left));
    left = taken(left, [wanted]);
  }
  return needed.map((wanted) => ({ ...wanted, has: has.get(wanted) ?? 0 }));
}

export function isEnough({ stickers, crayons, tools, papers }: Lacking): boolean {
  return stickers.length + crayons.length + tools.length + papers.length === 0;
}
