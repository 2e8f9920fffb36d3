// Why a pack cannot be made with what the house has: what it needs, what there is of that, and what would do.
import type { Refusal, Thing } from '../base/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { gatheredMaterials, type Sheet, type StickerStock, type Stock } from '../sheets/index.ts';
import { usedBy } from './hand-made.ts';
import { fitsDot, lackingFor, papersFor } from './stock.ts';
import { thingsIn } from './uses.ts';

/** `possible`: how many sheets can be had instead; 0: not known, or none. */
export function notInTheHouse(
  sheets: readonly Sheet[],
  stock: Stock,
  possible: number,
): Refusal & { readonly code: 'not-in-the-house' } {
  const needs = usedBy(sheets, stock);
  const { stickers, crayons, tools } = needs;
  const papers = papersFor(needs, stock);
  const lacking = lackingFor(needs, stock);
  return {
    ...{ code: 'not-in-the-house', at: 'onlyWith', sheets: sheets.length, possible },
    needs: thingsIn({ stickers: inHouseSizes(stickers, stock), crayons, tools, papers }),
    has: [
      ...(stickers.length === 0 ? [] : stickersThere(stock.stickers)),
      ...thingsIn({
        stickers: [],
        crayons: crayons.length === 0 ? [] : stock.crayons,
        tools: tools.filter((tool) => stock.tools.includes(tool)),
        papers: papers.length === 0 ? [] : (stock.papers ?? []),
      }),
    ],
    add: thingsIn({ ...lacking, stickers: inHouseSizes(lacking.stickers, stock) }),
  };
}

/** Dots as stickers of the largest size in the house that fits them; those that nothing fits at their own size. */
function inHouseSizes(dots: readonly StickerStock[], { stickers }: Stock): readonly StickerStock[] {
  const sizeFor = (dotMm: number) =>
    Math.max(
      ...stickers.flatMap(({ diameterMm, count }) =>
        count > 0 && fitsDot(diameterMm, dotMm) ? [diameterMm] : [],
      ),
    );
  const sized = dots.map((dot) => {
    const diameterMm = sizeFor(dot.diameterMm);
    return { ...dot, diameterMm: Number.isFinite(diameterMm) ? diameterMm : dot.diameterMm };
  });
  return gatheredMaterials(sized.map((dot) => ({ kind: 'sticker', ...dot }))).stickers;
}

/** The stickers among things. */
export function stickersIn(things: readonly Thing[]): readonly StickerStock[] {
  return things.flatMap(({ what, colour, diameterMm, count }) => {
    const name = COLOUR_NAMES.find((each) => each === colour);
    const isWhole = what === 'sticker' && diameterMm !== undefined && count !== undefined;
    return isWhole && name !== undefined ? [{ colour: name, diameterMm, count }] : [];
  });
}

function stickersThere(stickers: readonly StickerStock[]): readonly Thing[] {
  return thingsIn({
    stickers: stickers.filter(({ count }) => count > 0),
    ...{ crayons: [], tools: [], papers: [] },
  });
}
