// What is in the house: the last count less what was given since, and what a pack lacks of it.
import type { ColourName } from '../palette/index.ts';
import type { StickerStock, Stock, StockInView, Tool } from '../records/index.ts';
import { makeSheet, type PackMaterials, packMaterials, readCode } from '../sheets/index.ts';

/** A sticker may be so much smaller than its dot, in mm: common practice, no source. It must not be larger. */
const SMALLER_MM = 4;

/** What a sheet uses; `undefined` where this version cannot read its code. */
export type MaterialsOf = (code: string) => PackMaterials | undefined;

/** A reader that makes each sheet once and keeps what it found. */
export function materialsReader(): MaterialsOf {
  const known = new Map<string, PackMaterials | undefined>();
  return (code) => {
    if (!known.has(code)) known.set(code, readMaterials(code));
    return known.get(code);
  };
}

function readMaterials(code: string): PackMaterials | undefined {
  const spec = readCode(code);
  const made = spec.ok ? makeSheet(spec.value) : spec;
  return made.ok ? packMaterials([made.value]) : undefined;
}

/**
 * The stock after what was given since the count. Stickers go down to none at the least: what was lacking came from
 * elsewhere. A sheet that was recorded twice was given twice.
 */
export function stockNow({ counted, givenSince }: StockInView, materialsOf: MaterialsOf): Stock {
  const { stickers, crayons, tools, printer } = counted;
  const left = givenSince.reduce(
    (before, code) => taken(before, materialsOf(code)?.stickers ?? []),
    stickers,
  );
  return { stickers: left, crayons, tools, ...(printer === undefined ? {} : { printer }) };
}

/** Takes stickers from those that fit their dots, the nearest size first. */
function taken(
  stickers: readonly StickerStock[],
  used: readonly StickerStock[],
): readonly StickerStock[] {
  let left = stickers;
  for (const wanted of used) {
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
    .filter(
      (each) =>
        each.colour === colour &&
        each.diameterMm <= diameterMm &&
        each.diameterMm >= diameterMm - SMALLER_MM,
    )
    .sort((one, other) => other.diameterMm - one.diameterMm);
}

/** What a pack needs and the house has not. */
export interface Lacking {
  /** How many stickers are missing of each kind. */
  readonly stickers: readonly StickerStock[];
  readonly crayons: readonly ColourName[];
  readonly tools: readonly Tool[];
}

export function lackingFor(materials: PackMaterials, stock: Stock): Lacking {
  const needed: readonly Tool[] = [
    ...(materials.pencil ? (['pencil'] as const) : []),
    ...(materials.scissors ? (['scissors'] as const) : []),
    ...(materials.glue ? (['glue'] as const) : []),
  ];
  return {
    stickers: lackingStickers(materials.stickers, stock.stickers),
    crayons: materials.crayons.filter((colour) => !stock.crayons.includes(colour)),
    tools: needed.filter((tool) => !stock.tools.includes(tool)),
  };
}

function lackingStickers(
  needed: readonly StickerStock[],
  stickers: readonly StickerStock[],
): readonly StickerStock[] {
  let left = stickers;
  return needed.flatMap((wanted) => {
    const have = fittingFor(wanted, left).reduce((sum, { count }) => sum + count, 0);
    left = taken(left, [wanted]);
    return have >= wanted.count ? [] : [{ ...wanted, count: wanted.count - have }];
  });
}

export function isEnough({ stickers, crayons, tools }: Lacking): boolean {
  return stickers.length + crayons.length + tools.length === 0;
}
