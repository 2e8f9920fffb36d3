// The count as it is being written, and the entry that it comes to.
import { z } from 'zod';
import { PAPER_NAMES, type PaperName } from '../../page/index.ts';
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';
import {
  type Draft,
  PRINTERS,
  type Printer,
  type Stock,
  TOOLS,
  type Tool,
} from '../../records/index.ts';

export interface StickerRow {
  /** Tells rows apart while they are written. */
  readonly key: number;
  readonly colour: ColourName;
  readonly diameter: string;
  readonly count: string;
}

export interface StockDraft {
  readonly stickers: readonly StickerRow[];
  readonly crayons: readonly ColourName[];
  readonly tools: readonly Tool[];
  readonly printer: readonly Printer[];
  readonly papers: readonly PaperName[];
}

const NEW_ROW = { colour: 'red', diameter: '15', count: '' } as const;
const MOST = { diameterMm: 100, count: 100_000 } as const;

function draftOf(stock: Stock | undefined): StockDraft {
  const { stickers = [], crayons = [], tools = [], printer, papers = [] } = stock ?? {};
  return {
    stickers: stickers.map(({ colour, diameterMm, count }, key) => ({
      key,
      colour,
      diameter: String(diameterMm),
      count: String(count),
    })),
    crayons,
    tools,
    printer: printer === undefined ? [] : [printer],
    papers,
  };
}

const draftSchema: z.ZodType<StockDraft> = z.object({
  stickers: z.array(
    z.object({
      key: z.number(),
      colour: z.enum(COLOUR_NAMES),
      diameter: z.string(),
      count: z.string(),
    }),
  ),
  crayons: z.array(z.enum(COLOUR_NAMES)),
  tools: z.array(z.enum(TOOLS)),
  printer: z.array(z.enum(PRINTERS)),
  papers: z.array(z.enum(PAPER_NAMES)),
});

/** The draft that was left unsaved; that of the count as it is where none was. */
export function readStockDraft(left: unknown, stock: Stock | undefined): StockDraft {
  const read = draftSchema.safeParse(left);
  return read.success ? read.data : draftOf(stock);
}

export function withRow(draft: StockDraft): StockDraft {
  const key = Math.max(-1, ...draft.stickers.map((row) => row.key)) + 1;
  return { ...draft, stickers: [...draft.stickers, { ...NEW_ROW, key }] };
}

export function withoutRow(draft: StockDraft, key: number): StockDraft {
  return { ...draft, stickers: draft.stickers.filter((row) => row.key !== key) };
}

export function changedRow(draft: StockDraft, key: number, part: Partial<StickerRow>): StockDraft {
  const stickers = draft.stickers.map((row) => (row.key === key ? { ...row, ...part } : row));
  return { ...draft, stickers };
}

/** The first row, from 1, whose numbers cannot be; 0 where all can. */
export function wrongRow({ stickers }: StockDraft): number {
  return stickers.findIndex((row) => !isRight(row)) + 1;
}

function isRight({ diameter, count }: StickerRow): boolean {
  const isWhole = (written: string, least: number, most: number) =>
    /^\d+$/.test(written.trim()) && Number(written) >= least && Number(written) <= most;
  return isWhole(diameter, 1, MOST.diameterMm) && isWhole(count, 0, MOST.count);
}

export function stockEntryOf({ stickers, crayons, tools, printer, papers }: StockDraft): Draft {
  const [first] = printer;
  return {
    kind: 'stock',
    stickers: stickers.map(({ colour, diameter, count }) => ({
      colour,
      diameterMm: Number(diameter),
      count: Number(count),
    })),
    crayons,
    tools,
    ...(first === undefined ? {} : { printer: first }),
    ...(papers.length === 0 ? {} : { papers }),
  };
}
