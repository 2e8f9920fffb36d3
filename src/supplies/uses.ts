// What a pack uses against what there is, thing by thing.
import type { Thing } from '../base/index.ts';
import type { PackMaterials, Stock } from '../sheets/index.ts';
import { type Lacking, papersFor, stickerUses } from './stock.ts';

/** One thing that a pack uses; of crayons and tools one serves all sheets, and sheets of paper are not counted. */
export interface Use extends Thing {
  readonly uses: number;
  readonly has: number;
}

/** Stickers by colour and size, then crayons, tools, and papers where it was said which there are. */
export function usesOf(materials: PackMaterials, stock: Stock): readonly Use[] {
  const stickers = stickerUses(materials.stickers, stock.stickers).map(
    ({ colour, diameterMm, count, has }): Use => ({
      ...{ what: 'sticker', colour, diameterMm },
      ...{ uses: count, has },
    }),
  );
  const crayons = materials.crayons.map(
    (colour): Use => ({
      ...{ what: 'crayon', colour },
      ...{ uses: 1, has: stock.crayons.includes(colour) ? 1 : 0 },
    }),
  );
  const tools = materials.tools.map(
    (what): Use => ({ what, uses: 1, has: stock.tools.includes(what) ? 1 : 0 }),
  );
  const papers = papersFor(materials, stock).map(
    (paper): Use => ({
      ...{ what: 'paper', paper },
      ...{ uses: 1, has: stock.papers?.includes(paper) ? 1 : 0 },
    }),
  );
  return [...stickers, ...crayons, ...tools, ...papers];
}

/** The same as things by themselves, for a sentence. */
export function thingsIn({ stickers, crayons, tools, papers }: Lacking): readonly Thing[] {
  return [
    ...stickers.map((sticker): Thing => ({ what: 'sticker', ...sticker })),
    ...crayons.map((colour): Thing => ({ what: 'crayon', colour })),
    ...tools.map((what): Thing => ({ what })),
    ...papers.map((paper): Thing => ({ what: 'paper', paper })),
  ];
}
