// What the browser runs for the test of equal bytes with own pictures: sheets of them, made, proven and printed there.
import type { Page } from '../../src/page/index.ts';
import { DEFAULT_PAGE, makeSheet, pagesInInks } from '../../src/sheets/index.ts';
import { knownCopyOf, knownNumberOf, roundPhoto } from '../own-pictures.ts';
import { type FontTexts, pdfText } from './pdf-bytes-entry.ts';

/** Photos of one outline, which their insides tell apart, and a drawing of an outline of its own. */
const IDS = [
  roundPhoto('house', '#7a2b22', '#9cc4ea'),
  roundPhoto('ball', '#f4d64a', '#2c3a2a'),
  roundPhoto('shore', '#e8d9a8', '#3f6fa8'),
  roundPhoto('pole', '#111111', '#f2f0ea'),
].map(knownNumberOf);

export function ownPages(): readonly Page[] {
  const pictures = { ids: [...IDS, knownCopyOf('picture-key')] };
  return (['colour', 'grey'] as const).flatMap((print) =>
    ([pictures, { ids: IDS, alone: true }] as const).flatMap((chosen, seed) => {
      const about = {
        activity: 'find-the-same',
        step: 1,
        values: { content: 'pictures' },
      } as const;
      const made = makeSheet({ ...about, seed, page: DEFAULT_PAGE, print, pictures: chosen });
      if (!made.ok) throw new Error(JSON.stringify(made.refusals));
      const { full, saving } = pagesInInks(made.value);
      return [full, saving];
    }),
  );
}

export function makePdf(fonts: FontTexts): Promise<string> {
  return pdfText(ownPages(), fonts);
}
