// What sheets take of a house: what the child uses and, where there is no printer, what the adult makes the page with.
import type { Material } from '../activities/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';
import {
  gatheredMaterials,
  type Made,
  materialsToDo,
  type PackMaterials,
  type Sheet,
  type SheetMaterial,
  type Stock,
  type ToCut,
} from '../sheets/index.ts';

/** A dot of a page made by hand where the house has no stickers at all, in mm: common practice, no source. */
const USUAL_DOT_MM = 16;

/** How sheets come about in a house; absent: printed where it has a printer, with nothing to be cut out. */
export interface Making {
  readonly made?: Made | undefined;
  readonly toCut?: readonly ToCut[] | undefined;
}

/** A stock, and how sheets are to be made of it: whatever is left of it is for the same. */
export type House = Stock & Making;

/** The stock for sheets that come about in this way. */
export function houseFor(stock: Stock, { made, toCut }: Making): House {
  return { ...stock, made, toCut };
}

/**
 * All that sheets take. What a printer prints costs nothing; of half-made sheets each coloured dot is a sticker, too, and
 * by hand, as always without a printer, all that has a colour is made of something.
 */
export function usedBy(sheets: readonly Sheet[], stock: House): PackMaterials {
  return gatheredMaterials(sheets.flatMap((sheet) => materialsOf(sheet, stock)));
}

/** What two packs take together. */
export function together(one: PackMaterials, other: PackMaterials): PackMaterials {
  return gatheredMaterials([...singlyOf(one), ...singlyOf(other)]);
}

function singlyOf(materials: PackMaterials): readonly SheetMaterial[] {
  const { stickers, crayons, tools, papers } = materials;
  return [
    ...stickers.map((sticker): Material => ({ kind: 'sticker', ...sticker })),
    ...crayons.map((colour): Material => ({ kind: 'crayon', colour })),
    ...tools.map((kind): SheetMaterial => ({ kind })),
    ...papers.map((paper): SheetMaterial => ({ kind: 'paper', paper })),
  ];
}

function materialsOf(sheet: Sheet, house: House): readonly SheetMaterial[] {
  const made = house.printer === 'none' ? 'by-hand' : (house.made ?? 'printed');
  const used = materialsToDo(sheet, made === 'printed' ? house.toCut : []);
  if (made === 'printed') return used;
  const sticker = used.find((material) => material.kind === 'sticker');
  const dotMm = sticker?.diameterMm ?? usualStickerMm(house) ?? USUAL_DOT_MM;
  const own = sheet.tasks.flatMap(({ printed }) => madeByHand(printed, dotMm));
  const isOwn = ({ kind }: Material) => made === 'by-hand' || kind === 'sticker';
  return [...used, ...own.filter(isOwn)];
}

/**
 * The size of stickers, in mm, that dots made by hand have: of those that fit a usual dot, or else of all, the one that
 * there is most of, the larger one of two. Undefined: there are none.
 */
export function usualStickerMm({ stickers }: Stock): number | undefined {
  const there = stickers.filter(({ count }) => count > 0);
  const fitting = there.filter(({ diameterMm }) => diameterMm <= USUAL_DOT_MM);
  const [most] = [...(fitting.length > 0 ? fitting : there)].sort(
    (one, other) => other.count - one.count || other.diameterMm - one.diameterMm,
  );
  return most?.diameterMm;
}

/**
 * The coloured figures of a task, found by the one field that every figure has its colour in: dots of full size are
 * stickers, all else is drawn with a crayon.
 */
function madeByHand(printed: unknown, dotMm: number): readonly Material[] {
  if (typeof printed !== 'object' || printed === null) return [];
  const inside = Object.values(printed).flatMap((value) => madeByHand(value, dotMm));
  const colour = colourOf(printed);
  if (colour === undefined) return inside;
  const own: Material = isDot(printed)
    ? { kind: 'sticker', colour, diameterMm: dotMm, count: 1 }
    : { kind: 'crayon', colour };
  return [own, ...inside];
}

function colourOf(figure: object): ColourName | undefined {
  return 'colour' in figure ? COLOUR_NAMES.find((name) => name === figure.colour) : undefined;
}

function isDot(figure: object): boolean {
  const { form = 'circle', fill = 'solid', size = 1 } = figure as Readonly<Record<string, unknown>>;
  return form === 'circle' && fill === 'solid' && size === 1;
}
