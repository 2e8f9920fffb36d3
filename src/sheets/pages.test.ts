// What the pages of a pack promise: all there, in order, with the words an adult needs and nothing over an edge.
import { describe, expect, it } from 'vitest';
import { HOME_PAPERS, ORIENTATIONS, type PageChoice, type SceneNode } from '../page/index.ts';
import { answerPages } from './answer-pages.ts';
import { makePack } from './make-pack.ts';
import type { Pack } from './pack.ts';
import { packPages, printedPapers } from './pack-pages.ts';
import { rangesText } from './pack-parts.ts';
import { overEdge, words } from './pages-to-test.ts';

const KINDS = ['in-every-box', 'by-key', 'copy-pattern'] as const;

function packOf(sheets: number, page: PageChoice = { paper: 'A4', orientation: 'portrait' }): Pack {
  const parts = KINDS.map((activity) => ({ activity, step: 1, values: {}, sheets }));
  const pack = makePack({ seed: 3, page, print: 'colour', parts });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value;
}

describe('the pages of a pack', () => {
  it('are the adult’s page, a page a sheet, then the answers, four sheets to a page', () => {
    const pack = packOf(2);
    const titles = [...packPages(pack).pages].map(({ title }) => title);
    const adult = ['For the adult', 'For the adult, continued'];
    expect(titles.slice(0, adult.length)).toEqual(adult);
    for (const [index, { code }] of pack.sheets.entries())
      expect(titles[index + adult.length]).toContain(code);
    expect(titles.slice(adult.length + pack.sheets.length)).toEqual([
      'Answers, page 1 of 2',
      'Answers, page 2 of 2',
    ]);
  });

  it('can be taken twice, and without the adult’s page and the answers', () => {
    const pages = packPages(packOf(1), { withAdultPage: false, withAnswers: false });
    expect([...pages.pages]).toHaveLength(3);
    expect([...pages.pages]).toEqual([...pages.pages]);
  });

  it.each(
    HOME_PAPERS.flatMap((paper) => ORIENTATIONS.map((orientation) => ({ paper, orientation }))),
  )('keep inside the margins on %j', (page) => {
    for (const each of packPages(packOf(1, page)).pages) {
      expect(overEdge(each), each.title).toEqual([]);
    }
  });

  it.each([
    ['A4', 'portrait', 4, 'portrait'],
    ['A4', 'landscape', 4, 'landscape'],
    ['A3', 'landscape', 4, 'landscape'],
    // They lie on a page that stands, and fill boxes half as high.
    ['A5', 'landscape', 8, 'portrait'],
    ['A5', 'portrait', 4, 'portrait'],
  ] as const)(
    'answer sheets of %s %s by %i, on a page for the adult in %s',
    (paper, lies, count, adult) => {
      const part = { activity: 'odd-one-out', step: 1, values: {}, sheets: count + 1 } as const;
      const page = { paper, orientation: lies };
      const pack = makePack({ seed: 3, page, print: 'colour', parts: [part] });
      if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
      const pages = [...answerPages(pack.value.sheets)];
      const boxes = pages.map(({ nodes }) =>
        nodes.filter((node) => node.kind === 'group' && node.role === 'answer-sheet'),
      );
      expect(boxes.map(({ length }) => length)).toEqual([count, 1]);
      for (const each of pages) {
        expect(each.widthMm > each.heightMm).toBe(adult === 'landscape');
        expect(overEdge(each), each.title).toEqual([]);
      }
    },
  );

  it('of A5 come two on one A4, in order once the left pile lies on the right one; or each on its own', () => {
    const part = { activity: 'odd-one-out', step: 1, values: {}, sheets: 5 } as const;
    const page = { paper: 'A5', orientation: 'portrait' } as const;
    const pack = makePack({ seed: 3, page, print: 'colour', parts: [part] });
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    const sheetsOnly = { withAdultPage: false, withAnswers: false };
    const shared = [...packPages(pack.value, sheetsOnly).pages];
    const codes = pack.value.sheets.map(({ code }) => code);
    expect(shared.map((each) => codes.filter((code) => words(each).includes(code)))).toEqual([
      [codes[0], codes[3]],
      [codes[1], codes[4]],
      [codes[2]],
    ]);
    for (const each of shared) expect(overEdge(each), each.title).toEqual([]);
    const single = [...packPages(pack.value, { ...sheetsOnly, isSingle: true }).pages];
    expect(single.map(({ widthMm }) => widthMm)).toEqual([148, 148, 148, 148, 148]);
    expect([...packPages(pack.value).pages].map(words)[0]).toContain('cut along the dashed line');
  });

  it('are printed on these papers', () => {
    const page = (paper: PageChoice['paper']): PageChoice => ({ paper, orientation: 'portrait' });
    expect(printedPapers([page('A5')])).toEqual(['A4']);
    expect(printedPapers([page('A5')], true)).toEqual(['A5', 'A4']);
    expect(printedPapers([page('A3'), page('A4')])).toEqual(['A3', 'A4']);
    expect(printedPapers([page('Letter')])).toEqual(['Letter']);
  });

  it('carry on each sheet its code, and on the answer pages the code of every sheet', () => {
    const pack = packOf(2);
    const sheets = [...packPages(pack, { withAdultPage: false, withAnswers: false }).pages];
    const answers = [...answerPages(pack.sheets)].map(words).join(' ');
    for (const [index, { code }] of pack.sheets.entries()) {
      expect(words(sheets[index])).toContain(code);
      expect(answers).toContain(code);
    }
  });

  it('show other marks on the answer page than on the sheet', () => {
    const pack = packOf(1);
    const [page] = [...answerPages(pack.sheets)];
    const groups = (nodes: readonly SceneNode[]): number =>
      nodes.reduce((sum, node) => sum + (node.kind === 'group' ? groups(node.children) : 1), 0);
    const bare = [...packPages(pack, { withAdultPage: false, withAnswers: false }).pages].reduce(
      (sum, { nodes }) =>
        sum + groups(nodes.filter((node) => node.kind === 'group' && node.role === 'task-place')),
      0,
    );
    expect(groups(page?.nodes ?? [])).toBeGreaterThan(bare);
  });
});

describe('numbers of sheets', () => {
  it.each([
    [[1], '1'],
    [[1, 2], '1–2'],
    [[1, 2, 3, 7, 9, 10], '1–3, 7, 9–10'],
    [[1, 3, 5, 7, 9, 11, 13, 15, 17, 19], '1, 3, 5, 7, 9, 11, 13, …'],
  ])('%j are written %s', (numbers, text) => {
    expect(rangesText(numbers)).toBe(text);
  });
});
