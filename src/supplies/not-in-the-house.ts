// Why a pack cannot be made with what the house has: what it needs, what there is of that, and what would do.
import type { Refusal, Thing } from '../base/index.ts';
import type { Sheet, StickerStock, Stock } from '../sheets/index.ts';
import { usedBy } from './hand-made.ts';
import { lackingFor } from './stock.ts';
import { thingsIn, toolsOf } from './uses.ts';

/** `possible`: how many sheets can be had instead; 0: not known, or none. */
export function notInTheHouse(
  sheets: readonly Sheet[],
  stock: Stock,
  possible: number,
): Refusal & { readonly code: 'not-in-the-house' } {
  const needs = usedBy(sheets, stock);
  const { stickers, crayons } = needs;
  const tools = toolsOf(needs);
  return {
    ...{ code: 'not-in-the-house', at: 'onlyWith', sheets: sheets.length, possible },
    needs: thingsIn({ stickers, crayons, tools }),
    has: [
      ...(stickers.length === 0 ? [] : stickersThere(stock.stickers)),
      ...thingsIn({
        stickers: [],
        crayons: crayons.length === 0 ? [] : stock.crayons,
        tools: tools.filter((tool) => stock.tools.includes(tool)),
      }),
    ],
    add: thingsIn(lackingFor(needs, stock)),
  };
}

function stickersThere(stickers: readonly StickerStock[]): readonly Thing[] {
  return thingsIn({
    stickers: stickers.filter(({ count }) => count > 0),
    ...{ crayons: [], tools: [] },
  });
}
