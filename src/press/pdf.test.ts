// Writing a PDF: the same bytes every time, and pages that leave as soon as they are made.
import { describe, expect, test } from 'vitest';
import { sheetPageOf } from '../../tests/outside/press-pages.ts';
import { FONTS, pdfOf } from '../../tests/outside/press-reading.ts';
import { marked, type Page } from '../page/index.ts';
import { writePdf } from './index.ts';

test('the same pages give the same bytes', async () => {
  const pages = [sheetPageOf('ABCD-2345'), sheetPageOf('EFGH-6789')];
  expect(await pdfOf(pages)).toEqual(await pdfOf(structuredClone(pages)));
});

test('another page gives other bytes', async () => {
  expect(await pdfOf([sheetPageOf('ABCD-2345')])).not.toEqual(
    await pdfOf([sheetPageOf('ABCD-2346')]),
  );
});

test('marks, which are for the screen, change no byte', async () => {
  const page = sheetPageOf('ABCD-2345');
  const withMarks = page.nodes.map((node) => (node.kind === 'group' ? marked(node, 3) : node));
  expect(withMarks).not.toEqual(page.nodes);
  expect(await pdfOf([{ ...page, nodes: withMarks }])).toEqual(await pdfOf([page]));
});

describe('fifty pages', () => {
  /** Writes them while noting how many bytes had left when each page was asked for. */
  async function leftAtEachPage(): Promise<{ left: number[]; total: number; largest: number }> {
    const left: number[] = [];
    let [total, largest] = [0, 0];
    function* pages(): Generator<Page> {
      for (let index = 0; index < 50; index++) {
        left.push(total);
        yield sheetPageOf(`ABCD-${index}`);
      }
    }
    await writePdf({ title: 'A pack', language: 'en', pages: pages() }, FONTS, (chunk) => {
      total += chunk.length;
      largest = Math.max(largest, chunk.length);
    });
    return { left, total, largest };
  }

  test('leave while they are being made: no more than twenty wait at any time', async () => {
    const { left, total, largest } = await leftAtEachPage();
    const pageBytes = (left.at(-1) ?? 0) / 50;
    expect(pageBytes).toBeGreaterThan(1000);
    left.forEach((bytes, index) => {
      expect(index * pageBytes - bytes).toBeLessThan(20 * pageBytes);
    });
    expect(largest).toBeLessThan(total / 2);
  });
});

test('what goes wrong in a page reaches the caller', async () => {
  const page = { ...sheetPageOf('ABCD-2345'), widthMm: Number.NaN };
  await expect(pdfOf([page])).rejects.toThrow();
});
