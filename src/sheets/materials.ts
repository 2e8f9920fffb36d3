// What a pack needs on the table: its sheets' materials counted together.
import { PAPER_NAMES, type PaperName } from '../page/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';
import { materialsToDo, type SheetMaterial } from './cut-demands.ts';
import type { Sheet } from './sheet.ts';
import { type StickerStock, TOOLS, type Tool } from './stock-facts.ts';
import type { ToCut } from './to-cut.ts';

export interface PackMaterials {
  /** By colour in the order of the palette, then by size. */
  readonly stickers: readonly StickerStock[];
  readonly crayons: readonly ColourName[];
  readonly tools: readonly Tool[];
  /** What the sheets themselves lie on. */
  readonly papers: readonly PaperName[];
}

/** The things to lay out for all tasks of these sheets, with what is to be cut out. */
export function packMaterials(
  sheets: readonly Sheet[],
  toCut: readonly ToCut[] = [],
): PackMaterials {
  return gatheredMaterials(sheets.flatMap((sheet) => materialsToDo(sheet, toCut)));
}

/** Stickers are used up, so they add up; of all else one serves all sheets. */
export function gatheredMaterials(materials: readonly SheetMaterial[]): PackMaterials {
  const has = (kind: SheetMaterial['kind']) => materials.some((material) => material.kind === kind);
  return {
    stickers: countStickers(materials),
    crayons: COLOUR_NAMES.filter((colour) =>
      materials.some((material) => material.kind === 'crayon' && material.colour === colour),
    ),
    tools: TOOLS.filter(has),
    papers: PAPER_NAMES.filter((paper) =>
      materials.some((material) => material.kind === 'paper' && material.paper === paper),
    ),
  };
}

function countStickers(materials: readonly SheetMaterial[]): readonly StickerStock[] {
  const counts = new Map<string, StickerStock>();
  for (const material of materials) {
    if (material.kind !== 'sticker') continue;
    const { colour, diameterMm, count } = material;
    const kind = `${colour} ${diameterMm}`;
    counts.set(kind, { colour, diameterMm, count: count + (counts.get(kind)?.count ?? 0) });
  }
  const place = ({ colour }: StickerStock) => COLOUR_NAMES.indexOf(colour);
  return [...counts.values()].sort(
    (one, other) => place(one) - place(other) || one.diameterMm - other.diameterMm,
  );
}
