// The adult's page in blocks: headings, paragraphs and lists, each measured before it has a place.
import { compose, moveBy } from '../base/index.ts';
import type { Direction } from '../languages/index.ts';
import { INK } from './ink.ts';
import type { Area } from './layout.ts';
import { group, text } from './nodes.ts';
import type { Group, Paint, Text } from './scene.ts';
import { textWidthMm, wrapText } from './type.ts';

/** A piece of a page that knows its height. */
export interface Block {
  readonly heightMm: number;
  /** Blank above it in mm, unless it stands first. */
  readonly beforeMm: number;
  readonly draw: (leftMm: number, topMm: number) => Group;
}

/** The em of the adult's running text in mm (about 10 points). */
export const BODY_EM_MM = 3.6;
const HEADING_EM_MM = { 1: 6.2, 2: 4.2 } as const;
const HEADING_BEFORE_MM = { 1: 8, 2: 5 } as const;
const PARAGRAPH_BEFORE_MM = 2;
/** Height of a line in ems: Andika's long ascenders need more than most (by eye). */
const LINE_EMS = 1.45;
/** From the top of a line to its baseline, in ems. */
const BASELINE_EMS = 1.06;
const BULLET_GAP_MM = 2;
const COLUMN_GAP_MM = 5;
const WORDS_GAP_MM = 1.2;
const DRAWINGS_GAP_MM = 2.5;

export interface TextStyle {
  readonly emMm?: number;
  readonly weight?: Text['weight'];
  readonly colour?: Paint;
  /** Which way the words run; lines that run to the left begin at the right. */
  readonly direction?: Direction;
}

/** The title of a page (level 1) or of a part of it (level 2). */
export function heading(words: string, widthMm: number, level: 1 | 2 = 1): Block {
  const { heightMm, draw } = paragraph(words, widthMm, {
    emMm: HEADING_EM_MM[level],
    weight: 'bold',
  });
  return {
    heightMm,
    beforeMm: HEADING_BEFORE_MM[level],
    draw: (left, top) => ({ ...draw(left, top), role: `heading-${level}` }),
  };
}

/** Running text, wrapped at the width. */
export function paragraph(words: string, widthMm: number, style: TextStyle = {}): Block {
  const { emMm = BODY_EM_MM, weight = 'regular', colour = INK, ...way } = style;
  const start = way.direction === 'rtl' ? widthMm : 0;
  const lines = wrapText(words, widthMm, emMm, weight);
  const baselineOf = (index: number) => (index * LINE_EMS + BASELINE_EMS) * emMm;
  return {
    heightMm: lines.length * emMm * LINE_EMS,
    beforeMm: PARAGRAPH_BEFORE_MM,
    draw: (left, top) =>
      group(
        'paragraph',
        lines.map((line, index) =>
          text(line, left + start, top + baselineOf(index), emMm, { weight, colour, ...way }),
        ),
      ),
  };
}

/** A drawing of the given size from its own (0, 0), at the left. */
export function picture(
  drawing: Group,
  size: { readonly widthMm: number; readonly heightMm: number },
): Block {
  return {
    heightMm: size.heightMm,
    beforeMm: PARAGRAPH_BEFORE_MM,
    draw: (left, top) => moved(drawing, left, top),
  };
}

/** One item a line, each behind a small dot. */
export function bullets(items: readonly string[], widthMm: number, emMm = BODY_EM_MM): Block {
  return list(
    items.map((words) => ({ lead: '•', words })),
    { widthMm, gapMm: BULLET_GAP_MM, emMm },
  );
}

/** One item a line, numbered from 1. */
export function numbered(items: readonly string[], widthMm: number, emMm = BODY_EM_MM): Block {
  return list(
    items.map((words, index) => ({ lead: `${index + 1}`, words })),
    { widthMm, gapMm: BULLET_GAP_MM, emMm },
  );
}

/** What stands at the left of a row: words, or a drawing of the given size from its own (0, 0). */
export type Lead =
  | string
  | { readonly drawing: Group; readonly widthMm: number; readonly heightMm: number };

export interface LeadRow {
  readonly lead: Lead;
  readonly words: string;
}

/** Two columns: leads, as wide as the widest needs, and text beside each, wrapped. */
export function leadRows(rows: readonly LeadRow[], widthMm: number, emMm = BODY_EM_MM): Block {
  return list(rows, { widthMm, gapMm: COLUMN_GAP_MM, emMm });
}

interface ListStyle {
  readonly widthMm: number;
  /** Between the widest lead and the words. */
  readonly gapMm: number;
  readonly emMm: number;
}

function list(rows: readonly LeadRow[], { widthMm, gapMm, emMm }: ListStyle): Block {
  const indentMm = Math.max(0, ...rows.map(({ lead }) => leadWidthMm(lead, emMm))) + gapMm;
  const items = rows.map(({ lead, words }) => {
    const leadBlock =
      typeof lead === 'string' ? paragraph(lead, indentMm, { emMm }) : picture(lead.drawing, lead);
    const wordsBlock = paragraph(words, widthMm - indentMm, { emMm });
    return listItem(leadBlock, wordsBlock, indentMm, typeof lead !== 'string');
  });
  const stack = stackBlocks(items, { left: 0, top: 0, width: widthMm, height: Infinity });
  return {
    heightMm: stack.heightMm,
    beforeMm: PARAGRAPH_BEFORE_MM,
    draw: (left, top) => moved({ ...stack.group, role: 'list' }, left, top),
  };
}

/** A lead and its text. Words begin on the first line; a drawing stands in the middle beside its text. */
function listItem(lead: Block, words: Block, indentMm: number, isDrawing: boolean): Block {
  const heightMm = Math.max(lead.heightMm, words.heightMm);
  const down = (block: Block) => (isDrawing ? (heightMm - block.heightMm) / 2 : 0);
  return {
    heightMm,
    beforeMm: isDrawing ? DRAWINGS_GAP_MM : WORDS_GAP_MM,
    draw: (left, top) =>
      group('list-item', [
        group('list-lead', [lead.draw(left, top + down(lead))]),
        group('list-words', [words.draw(left + indentMm, top + down(words))]),
      ]),
  };
}

function leadWidthMm(lead: Lead, emMm: number): number {
  return typeof lead === 'string' ? textWidthMm(lead, emMm, 'regular') : lead.widthMm;
}

export interface Stack {
  readonly group: Group;
  /** Height that the placed blocks take in mm. */
  readonly heightMm: number;
  /** The blocks that the area had no room for, in order. */
  readonly rest: readonly Block[];
}

/** Blocks under one another from the top of the area, as many as fit; at least one, so that a page is never empty. */
export function stackBlocks(blocks: readonly Block[], area: Area): Stack {
  const placed: Group[] = [];
  let heightMm = 0;
  for (const block of blocks) {
    const top = placed.length === 0 ? 0 : heightMm + block.beforeMm;
    if (placed.length > 0 && top + block.heightMm > area.height) break;
    placed.push(block.draw(area.left, area.top + top));
    heightMm = top + block.heightMm;
  }
  return { group: group('blocks', placed), heightMm, rest: blocks.slice(placed.length) };
}

/** Blocks that no end of a page parts. */
export function together(blocks: readonly Block[], beforeMm: number): Block {
  const endless = { width: Number.POSITIVE_INFINITY, height: Number.POSITIVE_INFINITY };
  const stackAt = (left: number, top: number) => stackBlocks(blocks, { left, top, ...endless });
  return {
    heightMm: stackAt(0, 0).heightMm,
    beforeMm,
    draw: (left, top) => stackAt(left, top).group,
  };
}

/** A block and how wide it is in mm. */
export interface Column {
  readonly block: Block;
  readonly widthMm: number;
}

/** Blocks beside one another, their tops level, which no end of a page parts. */
export function besideBlocks(columns: readonly Column[], gapMm: number, beforeMm: number): Block {
  return {
    heightMm: Math.max(0, ...columns.map(({ block }) => block.heightMm)),
    beforeMm,
    draw: (left, top) => {
      let at = left;
      const drawn = columns.map(({ block, widthMm }) => {
        const group = block.draw(at, top);
        at += widthMm + gapMm;
        return group;
      });
      return group('beside', drawn);
    },
  };
}

function moved(drawing: Group, left: number, top: number): Group {
  const move = moveBy(left, top);
  return {
    ...drawing,
    transform: drawing.transform ? compose(move, drawing.transform) : move,
  };
}
