// Lines in other scripts on paper: which side they begin at, and that letters are read in order.
import { beforeAll, describe, expect, test } from 'vitest';
import { linePageOf } from '../../tests/outside/press-pages.ts';
import { elementsOf, pdfOf, readWith } from '../../tests/outside/press-reading.ts';
import { loadAllScripts, WORDS } from '../../tests/outside/script-fonts.ts';
import { pathBounds } from '../base/index.ts';
import { paragraph, type Text, text, textWidthMm } from '../page/index.ts';
import { lettersOf } from './lettering.ts';
import { svgOf } from './svg.ts';

beforeAll(loadAllScripts);

/** Left and right end of the ink in mm. */
function inkOf(line: Text): readonly [number, number] {
  const bounds = lettersOf(line)
    .filter(({ outline }) => outline.length > 0)
    .map(({ xMm, outline }) => {
      const { left, right } = pathBounds(outline);
      return [xMm + left * line.emMm, xMm + right * line.emMm] as const;
    });
  return [Math.min(...bounds.map(([left]) => left)), Math.max(...bounds.map(([, right]) => right))];
}

describe('a line that runs to the left', () => {
  test.each([
    ['start', -1],
    ['middle', -0.5],
    ['end', 0],
  ] as const)('has its %s where its anchor is', (anchor, share) => {
    const width = textWidthMm('ليلى', 10);
    const [left, right] = inkOf(text('ليلى', 100, 50, 10, { anchor, direction: 'rtl' }));
    expect(Math.abs(left - (100 + share * width))).toBeLessThan(1.5);
    expect(Math.abs(right - (100 + share * width + width))).toBeLessThan(1.5);
  });

  test('begins at the left like any name where no direction is said', () => {
    expect(Math.abs(inkOf(text('ليلى', 100, 50, 10))[0] - 100)).toBeLessThan(1.5);
  });

  test('stands at the right of its paragraph, line by line', () => {
    const block = paragraph('ليلى '.repeat(20).trim(), 40, { direction: 'rtl' }).draw(10, 10);
    const lines = block.children.filter((node) => node.kind === 'text');
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) {
      const [left, right] = inkOf(line);
      expect(right).toBeGreaterThan(49);
      expect(right).toBeLessThan(50.5);
      expect(left).toBeGreaterThan(9.5);
    }
  });
});

const LINES = [
  'انظر إلى الصور الثلاث (أو 4 صور) وقل: أيّها مختلفة؟',
  'مُحَمَّد وعبد الله، كلّ صورة',
  'שלום לילדים: מצאו את 3 הצורות (הזהות) בדף.',
  'एक दिन क्षितिज ने अपनी बहन से कहा, “देखो।”',
  'Соня и Ελένη, Nguyễn, Ọlá',
  ...WORDS.devanagari.filter((word) => !/[\u200c\u200d]/.test(word)),
];

/** Signs that a reader adds to say which way words run. */
const ORDER_SIGNS = /[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

test.each(LINES)('poppler reads %s as it was written', async (line) => {
  const leftward = /[\u0590-\u06ff]/.test(line);
  const node = text(line, leftward ? 190 : 20, 20, 6, leftward ? { direction: 'rtl' } : {});
  const pdf = await pdfOf([{ ...linePageOf(''), nodes: [node] }]);
  const said = readWith(pdf, 'pdftotext', 'FILE', '-').replace(ORDER_SIGNS, '');
  // Poppler takes signs to run to the right in any line, and with them moves the spaces beside them.
  const close = (words: string) => words.normalize('NFC').replace(/\s+/g, '');
  expect(close(said)).toBe(close(line));
  for (const word of line.normalize('NFC').match(/[\p{L}\p{M}]+/gu) ?? [])
    expect(said.normalize('NFC').match(/[\p{L}\p{M}]+/gu)).toContain(word);
  expect(elementsOf(pdf, 'P')).toEqual([{ actual: line }]);
});

test('the picture of a page says each line as it is read', () => {
  expect(svgOf({ ...linePageOf(''), nodes: [text('ليلى (4)', 20, 20, 6)] })).toContain(
    'aria-label="ليلى (4)"',
  );
});

test('a page with a font more is a sound PDF, and a page without has none of it', async () => {
  const pdf = await pdfOf([linePageOf('ليلى आरव Соня')]);
  expect(readWith(pdf, 'qpdf', '--check', 'FILE')).toContain('No syntax or stream encoding errors');
  const fonts = readWith(pdf, 'pdffonts', 'FILE');
  for (const name of ['NotoNaskhArabic', 'NotoSansDevanagari', 'Andika'])
    expect(fonts).toMatch(new RegExp(`\\+${name}.* yes yes yes`));
  expect(readWith(await pdfOf([linePageOf('Leila')]), 'pdffonts', 'FILE')).not.toContain('Noto');
});
