// Pages with a bit of everything, for tests that read them back.
import { circlePath } from '../../src/base/index.ts';
import { FILLS, GLYPHS, SHAPES } from '../../src/figures/index.ts';
import {
  box,
  bullets,
  CHECK_LINE_SIZE,
  centreOf,
  checkLine,
  drawFigure,
  drawFoot,
  filled,
  gridPlaces,
  group,
  heading,
  INK,
  leadRows,
  type Orientation,
  type Page,
  type PaperName,
  pageSize,
  paragraph,
  picture,
  printArea,
  sheetArea,
  stackBlocks,
  text,
} from '../../src/page/index.ts';
import { FIGURE_COLOURS } from '../../src/palette/index.ts';

export const QUESTION = 'Which colours are in every box?';
const COLOURS = ['#d7263d', '#1f9d3a', '#1d4ed8', '#f97306'] as const;

/** A sheet of four boxes of dots with its foot. */
export function sheetPageOf(
  code: string,
  paper: PaperName = 'A4',
  orientation: Orientation = 'portrait',
): Page {
  const boxes = gridPlaces(4, 2, sheetArea(paper, orientation), 10).map((place, index) => {
    const dots = gridPlaces(4, 2, place, 6).map((cell, dot) => {
      const { x, y } = centreOf(cell);
      const colour = COLOURS[(index + dot) % COLOURS.length] ?? INK;
      return filled(circlePath(x, y, 8), colour, { colour: INK, widthMm: 0.6 });
    });
    const outline = box(place.left, place.top, place.width, place.height);
    return group('task', [outline, ...dots], `box ${index + 1}: four dots`);
  });
  const labels = { name: 'Name', date: 'Date', qr: 'The sheet code as a QR code' };
  const words = { question: QUESTION, about: 'dots · step 1', labels };
  const foot = drawFoot({ paper, orientation, code, ...words });
  return { ...pageSize(paper, orientation), title: `Sheet ${code}`, nodes: [...boxes, foot] };
}

/** An adult's page: headings, paragraphs, lists, and the check line. */
export function adultPageOf(paper: PaperName = 'A4'): Page {
  const area = printArea(paper, 'portrait');
  const dot = group('figure', [filled(circlePath(6.5, 6.5, 6), '#d7263d')], 'red dot');
  const { group: blocks } = stackBlocks(
    [
      heading('For the adult', area.width),
      paragraph(PARAGRAPH, area.width),
      heading('Lay out', area.width, 2),
      leadRows(
        [{ lead: { drawing: dot, widthMm: 13, heightMm: 13 }, words: 'Six red stickers' }],
        area.width,
      ),
      heading('To start, say', area.width, 2),
      bullets(['Look at all the boxes.', 'Which colour is in every box?'], area.width),
      picture(checkLine(0, 0, 'This line is 50 mm long.'), CHECK_LINE_SIZE),
    ],
    area,
  );
  return { ...pageSize(paper, 'portrait'), title: 'For the adult', nodes: [blocks] };
}

export const PARAGRAPH = 'Sit beside the child, and stop while it is still fun. '.repeat(6).trim();

/** One line of words on a page of its own. */
export function linePageOf(words: string): Page {
  return { ...pageSize('A4', 'portrait'), title: words, nodes: [text(words, 20, 40, 5)] };
}

/** Shapes in every fill, turned, coloured and in grey: clips, textures, bands and marks. */
export function figuresPageOf(): Page {
  const cells = gridPlaces(SHAPES.length, 4, sheetArea('A4', 'portrait'), 8);
  const nodes = SHAPES.flatMap((form, index) => {
    const [cell, fill] = [cells[index], FILLS[index % FILLS.length]];
    const colour = FIGURE_COLOURS[index % FIGURE_COLOURS.length];
    if (!cell) return [];
    const { x, y } = centreOf(cell);
    const print = index % 3 === 0 ? 'grey' : 'colour';
    const side = Math.min(cell.width, cell.height);
    return [drawFigure({ form, fill, colour, turn: index * 15 }, x, y, side, { print })];
  });
  return { ...pageSize('A4', 'portrait'), title: 'Figures', nodes };
}

/** Every letter that there is, but the soft hyphen, which marks a place to break and is not seen. */
export const LETTERS = [...GLYPHS].filter((letter) => letter !== '\u00AD');

/** So many letters in two weights are a page. */
const LETTERS_A_PAGE = 180;

/** All letters in both weights, on as many pages as they need. */
export function specimenPages(): readonly Page[] {
  return Array.from({ length: Math.ceil(LETTERS.length / LETTERS_A_PAGE) }, (_, page) =>
    specimenPageOf(LETTERS.slice(page * LETTERS_A_PAGE, (page + 1) * LETTERS_A_PAGE)),
  );
}

function specimenPageOf(letters: readonly string[]): Page {
  const { left, top } = printArea('A4', 'portrait');
  const lines = Array.from({ length: Math.ceil(letters.length / 30) }, (_, line) =>
    letters.slice(line * 30, line * 30 + 30).join(' '),
  );
  const nodes = (['regular', 'bold'] as const).flatMap((weight, half) =>
    lines.map((line, index) =>
      text(line, left, top + 8 * (index + 1 + half * (lines.length + 1)), 4.4, { weight }),
    ),
  );
  return { ...pageSize('A4', 'portrait'), title: 'Letters', nodes };
}
