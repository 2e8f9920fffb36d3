// What a house has to make sheets with, as a count of it is written down; every size limited.
import { z } from 'zod';
import { accept, type Result, refuse } from '../base/index.ts';
import { PAPER_NAMES, type PaperName } from '../page/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';
import { readJson } from './json-text.ts';
import { closedObject, wholeNumber } from './schema-parts.ts';
import { refusalsOf } from './schema-refusals.ts';
import { versionRefusal } from './version-refusal.ts';

/** Round stickers of one colour and size. */
export interface StickerStock {
  readonly colour: ColourName;
  readonly diameterMm: number;
  readonly count: number;
}

export const PRINTERS = ['colour', 'grey', 'none'] as const;
export type Printer = (typeof PRINTERS)[number];

/** Things that are there or not. */
export const TOOLS = ['pencil', 'scissors', 'glue', 'counters', 'pockets'] as const;
export type Tool = (typeof TOOLS)[number];

/** What is in the house; what is left out was not said. */
export interface Stock {
  readonly stickers: readonly StickerStock[];
  /** Colours of crayons or pens. */
  readonly crayons: readonly ColourName[];
  /** Pencil, children's scissors, glue stick, small counters, wipe-clean pockets. */
  readonly tools: readonly Tool[];
  readonly printer?: Printer;
  /** Sizes of paper; absent: any. */
  readonly papers?: readonly PaperName[];
}

/** Generous for people, narrow for a file made to fill a disk (our own choice). */
const MOST = { kindsOfStickers: 200, stickers: 100_000, diameterMm: 100 };

/** The fields of a count, wherever it stands. */
export const STOCK_FIELDS = {
  stickers: z
    .array(
      closedObject({
        colour: z.enum(COLOUR_NAMES),
        diameterMm: wholeNumber(1, MOST.diameterMm),
        count: wholeNumber(0, MOST.stickers),
      }),
    )
    .max(MOST.kindsOfStickers),
  crayons: z.array(z.enum(COLOUR_NAMES)).max(COLOUR_NAMES.length),
  tools: z.array(z.enum(TOOLS)).max(TOOLS.length),
  printer: z.exactOptional(z.enum(PRINTERS)),
  papers: z.exactOptional(z.array(z.enum(PAPER_NAMES)).max(PAPER_NAMES.length)),
};

/** A count within a recipe. */
export const stockSchema = closedObject(STOCK_FIELDS);

const STOCK_FORMAT = 'samewise.stock';

/** A count as a file of its own. */
export const stockFileSchema = closedObject({
  format: z.literal(STOCK_FORMAT),
  version: z.literal(1),
  ...STOCK_FIELDS,
});

/** A count is some rows; more than this is none (about 100 kB). */
export const STOCK_CHARACTERS = 100_000;

/** Reads a count from the text of a file; refuses too much of it before parsing, and unknown fields by their paths. */
export function readStockText(text: string): Result<Stock> {
  const json = readJson(text, 'stock', { characters: STOCK_CHARACTERS });
  if (!json.ok) return json;
  const version = versionRefusal(json.value, STOCK_FORMAT, 'stock');
  if (version) return refuse(version);
  const read = stockFileSchema.safeParse(json.value);
  if (!read.success) return refuse(...refusalsOf(read.error, json.value, 'stock'));
  const { format: _format, version: _version, ...stock } = read.data;
  return accept(stock);
}
