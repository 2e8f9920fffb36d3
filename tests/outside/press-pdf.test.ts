// The PDF as others read it: qpdf (its own parser), and poppler's pdfinfo, pdftotext and pdffonts.
import { describe, expect, test } from 'vitest';
import { circlePath } from '../../src/base/index.ts';
import { filled, group, ORIENTATIONS, PAPER_NAMES } from '../../src/page/index.ts';
import {
  adultPageOf,
  LETTERS,
  linePageOf,
  PARAGRAPH,
  QUESTION,
  sheetPageOf,
  specimenPages,
} from './press-pages.ts';
import { elementsOf, objectsOf, pdfOf, readWith } from './press-reading.ts';

/** ISO 216 (A3 297 × 420, A4 210 × 297, A5 148 × 210 mm) and 8.5 × 11 inches, in points of 1/72 inch. */
const POINTS = {
  A3: [841.89, 1190.551],
  A4: [595.276, 841.89],
  A5: [419.528, 595.276],
  Letter: [612, 792],
} as const;

/** Texts that could break a file, each with what a reader is to be told. */
const HOSTILE = [
  [`<b> & "quotes" ' (brackets) \\ %`, `<b> & "quotes" ' (brackets) \\ %`],
  ['bell\u0007 null\u0000 escape\u001b', 'bell\uFFFD null\uFFFD escape\uFFFD'],
  ['half a pair \uD83D and \uDC00', 'half a pair \uFFFD and \uFFFD'],
  ['გამარჯობა สวัสดี', 'გამარჯობა สวัสดี'],
  ['🙂👩‍👧', '🙂👩‍👧'],
  ['line\nfeed\tand tab', 'line feed and tab'],
] as const;

const pack = await pdfOf(
  [sheetPageOf('ABCD-2345'), adultPageOf(), sheetPageOf('EFGH-6789', 'Letter', 'landscape')],
  { title: 'Six sheets & a “key” <1>', language: 'en' },
);

/** Lines of any length as one, so that where a reader breaks them does not matter. */
function unbroken(words: string): string {
  return words.replace(/\s+/g, ' ').trim();
}

test('qpdf finds no fault in syntax or streams', () => {
  expect(readWith(pack, 'qpdf', '--check', 'FILE')).toContain(
    'No syntax or stream encoding errors',
  );
});

test.each(
  PAPER_NAMES.flatMap((paper) => ORIENTATIONS.map((orientation) => [paper, orientation] as const)),
)('the page is %s %s to a hundredth of a point', async (paper, orientation) => {
  const info = readWith(await pdfOf([sheetPageOf('ABCD', paper, orientation)]), 'pdfinfo', 'FILE');
  const size = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(info)?.slice(1).map(Number) ?? [];
  const [short, long] = POINTS[paper];
  const wanted = orientation === 'portrait' ? [short, long] : [long, short];
  wanted.forEach((points, index) => {
    expect(Math.abs((size[index] ?? 0) - points)).toBeLessThan(0.01);
  });
});

test('the file names itself, its language and its making, is tagged, and has no script', () => {
  const info = readWith(pack, 'pdfinfo', 'FILE');
  expect(info).toMatch(/^Title: +Six sheets & a “key” <1>$/m);
  expect(info).toMatch(/^Tagged: +yes$/m);
  expect(info).toMatch(/^JavaScript: +no$/m);
  expect(info).toMatch(/^Pages: +3$/m);
  const catalogue = objectsOf(pack).find((object) => object['/Type'] === '/Catalog');
  expect(catalogue?.['/Lang']).toBe('u:en');
  const preferences = objectsOf(pack).find((object) => '/DisplayDocTitle' in object);
  expect(preferences).toEqual({ '/DisplayDocTitle': true, '/PrintScaling': '/None' });
});

test('its XML metadata is whole and says the title', () => {
  const metadata = readWith(pack, 'pdfinfo', '-meta', 'FILE');
  expect(metadata).toContain('Six sheets &amp; a “key” &lt;1&gt;');
});

test('the text comes back: question, code, every paragraph', () => {
  const said = unbroken(readWith(pack, 'pdftotext', 'FILE', '-'));
  for (const words of [
    QUESTION,
    'ABCD-2345',
    'EFGH-6789',
    PARAGRAPH,
    'Six red stickers',
    'For the adult',
  ]) {
    expect(said).toContain(words);
  }
});

test('every letter of the font comes back as itself, in both weights', async () => {
  const said = readWith(await pdfOf(specimenPages()), 'pdftotext', 'FILE', '-');
  for (const letter of LETTERS) {
    if (letter.trim() !== '') expect(said.split(letter).length, letter).toBeGreaterThan(2);
  }
});

test('Andika is embedded as a subset in both weights, with the way back to characters', () => {
  const fonts = readWith(pack, 'pdffonts', 'FILE').split('\n').slice(2, -1);
  expect(fonts).toHaveLength(2);
  for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+Andika(-Bold)? .* yes yes yes/);
});

describe('the structure', () => {
  test('each task is a figure with its alternative text, and so is the QR code', () => {
    const alts = elementsOf(pack, 'Figure').map(({ alt }) => alt);
    const boxes = [1, 2, 3, 4].map((box) => `box ${box}: four dots`);
    const sheet = [...boxes, 'The sheet code as a QR code'];
    expect(alts).toHaveLength(2 * sheet.length + 1);
    expect(new Set(alts)).toEqual(new Set([...sheet, 'red dot']));
  });

  test('headings, paragraphs and lists are what they are, in the order of reading', () => {
    const tree = readWith(pack, 'pdfinfo', '-struct-text', 'FILE');
    const adult = tree.slice(
      tree.indexOf('Sect "For the adult"'),
      tree.indexOf('Sect "Sheet EFGH'),
    );
    const types = [...adult.matchAll(/^ *(H1|H2|P|L|LI|Lbl|LBody|Figure)\b/gm)].map(
      ([, type]) => type,
    );
    const item = (lead: string) => ['LI', 'Lbl', lead, 'LBody', 'P'];
    expect(types).toEqual([
      ...['H1', 'P', 'H2', 'L', ...item('Figure'), 'H2', 'L', ...item('P'), ...item('P'), 'P'],
    ]);
    expect(unbroken(tree)).toContain(`"${PARAGRAPH}"`);
  });

  test('a picture inside a picture is not told twice', async () => {
    const dot = group('figure', [filled(circlePath(50, 50, 9), '#d7263d')], 'red dot');
    const page = { ...linePageOf('x'), nodes: [group('task', [dot], 'one box with a red dot')] };
    expect(elementsOf(await pdfOf([page]), 'Figure')).toEqual([{ alt: 'one box with a red dot' }]);
  });
});

test.each(HOSTILE)(
  'the text %j breaks nothing as a line, a title or an alternative text, and is told as %j',
  async (words, told) => {
    const task = group('task', [], words);
    const page = { ...linePageOf(words), nodes: [...linePageOf(words).nodes, task] };
    const pdf = await pdfOf([page], { title: words, language: words });
    expect(readWith(pdf, 'qpdf', '--check', 'FILE')).toContain(
      'No syntax or stream encoding errors',
    );
    expect(elementsOf(pdf, 'Figure')).toEqual([{ alt: told }]);
  },
);

test('a line with letters that the font lacks is told in full, though they are drawn as boxes', async () => {
  const pdf = await pdfOf([linePageOf('Salami: სალამი 🙂')]);
  expect(elementsOf(pdf, 'P')).toEqual([{ actual: 'Salami: სალამი 🙂' }]);
  expect(unbroken(readWith(pdf, 'pdftotext', 'FILE', '-'))).toContain('Salami:');
});
