// What the pages of a pack promise: all there, in order, with the words an adult needs and nothing over an edge.
import { describe, expect, it } from 'vitest';
import { compose, IDENTITY, pathBounds, type Transform, transformPath } from '../base/index.ts';
import {
  CHECK_LINE_MM,
  ORIENTATIONS,
  PAPER_NAMES,
  type Page,
  type SceneNode,
  textWidthMm,
} from '../page/index.ts';
import { adultPages } from './adult-page.ts';
import { answerPages } from './answer-pages.ts';
import { makePack } from './make-pack.ts';
import type { Pack } from './pack.ts';
import { packPages } from './pack-pages.ts';
import { rangesText } from './pack-parts.ts';
import type { PageChoice } from './sheet-spec.ts';

/** Three kinds of sheet: as many as one adult's page introduces beside its list of sheets. */
const KINDS = ['in-every-box', 'by-key', 'copy-pattern'] as const;

function packOf(sheets: number, page: PageChoice = { paper: 'A4', orientation: 'portrait' }): Pack {
  const parts = KINDS.map((activity) => ({ activity, step: 1, values: {}, sheets }));
  const pack = makePack({ seed: 3, page, print: 'colour', parts });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value;
}

function textsIn(nodes: readonly SceneNode[]): string[] {
  return nodes.flatMap((node) => {
    if (node.kind === 'text') return [node.text];
    return node.kind === 'group' ? textsIn(node.children) : [];
  });
}
const words = (page: Page | undefined) => textsIn(page?.nodes ?? []).join(' ');

/** What sticks out of the margin of 12 mm less half a line, as text for the message. */
function overEdge(page: Page): string[] {
  const isOut = (left: number, top: number, right: number, bottom: number) =>
    left < 11 || top < 11 || right > page.widthMm - 11 || bottom > page.heightMm - 11;
  const visit = (node: SceneNode, outer: Transform): string[] => {
    if (node.kind === 'group') {
      const transform = compose(outer, node.transform ?? IDENTITY);
      return node.clip ? [] : node.children.flatMap((child) => visit(child, transform));
    }
    if (node.kind === 'shape') {
      const { left, top, right, bottom } = pathBounds(transformPath(node.path, outer));
      return isOut(left, top, right, bottom) ? [`shape ${left} ${top} ${right} ${bottom}`] : [];
    }
    const width = textWidthMm(node.text, node.emMm, node.weight);
    const shift = { start: 0, middle: width / 2, end: width }[node.anchor];
    const left = outer[0] * (node.xMm - shift) + outer[4];
    const baseline = outer[3] * node.baselineMm + outer[5];
    return isOut(left, baseline - 1, left + outer[0] * width, baseline)
      ? [`text ${node.text}`]
      : [];
  };
  return page.nodes.flatMap((node) => visit(node, IDENTITY));
}

describe('the pages of a pack', () => {
  it('are the adult’s page, a page a sheet, then the answers, four sheets to a page', () => {
    const pack = packOf(2);
    const titles = [...packPages(pack).pages].map(({ title }) => title);
    expect(titles[0]).toBe('For the adult');
    for (const [index, { code }] of pack.sheets.entries())
      expect(titles[index + 1]).toContain(code);
    expect(titles.slice(7)).toEqual(['Answers, page 1 of 2', 'Answers, page 2 of 2']);
  });

  it('can be taken twice, and without the adult’s page and the answers', () => {
    const pages = packPages(packOf(1), { withAdultPage: false, withAnswers: false });
    expect([...pages.pages]).toHaveLength(3);
    expect([...pages.pages]).toEqual([...pages.pages]);
  });

  it.each(
    PAPER_NAMES.flatMap((paper) => ORIENTATIONS.map((orientation) => ({ paper, orientation }))),
  )('keep inside the margins on %j', (page) => {
    for (const each of packPages(packOf(1, page)).pages) {
      expect(overEdge(each), each.title).toEqual([]);
    }
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

describe('the adult’s page', () => {
  it('says what to lay out, to say, to show, to measure, and to take care of', () => {
    const said = words(adultPages(packOf(1))[0]);
    for (const part of [
      'Lay out',
      'To start',
      'Say',
      'Show',
      'True size',
      'Take care',
      'The sheets',
    ]) {
      expect(said).toContain(part);
    }
    for (const caution of [
      '16 CFR 1501',
      'EN 71-1',
      'no diagnosis',
      'eye-care',
      'come first',
      'proven',
    ]) {
      expect(said).toContain(caution);
    }
  });

  it('has a line of exactly 50 mm', () => {
    const lines = (nodes: readonly SceneNode[], inLine = false): number[] =>
      nodes.flatMap((node) => {
        if (node.kind === 'group')
          return lines(node.children, inLine || node.role === 'check-line');
        if (node.kind !== 'shape' || !inLine) return [];
        const { left, right } = pathBounds(node.path);
        return [right - left];
      });
    const [longest] = lines(adultPages(packOf(1))[0]?.nodes ?? []).sort(
      (one, other) => other - one,
    );
    expect(longest).toBeCloseTo(50, 9);
    expect(CHECK_LINE_MM).toBe(50);
  });

  it('cuts a long list of sheets off and says how many more there are', () => {
    const pack = packOf(1);
    const sheets = Array.from({ length: 400 }, () => pack.sheets).flat();
    const pages = adultPages({ sheets });
    expect(pages).toHaveLength(1);
    expect(words(pages[0])).toMatch(/and \d+ more sheets, each with its code at the foot/);
    expect(overEdge(pages[0] ?? { widthMm: 0, heightMm: 0, nodes: [], title: '' })).toEqual([]);
  });

  it('counts stickers by colour and size over all sheets', () => {
    const parts = [
      {
        activity: 'in-every-box',
        step: 1,
        values: { response: 'sticker' },
        tasks: 2,
        sheets: 3,
      } as const,
    ];
    const page = { paper: 'A4', orientation: 'portrait' } as const;
    const pack = makePack({ seed: 1, page, print: 'colour', parts });
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    const said = words(adultPages(pack.value)[0]);
    const stickers = /Stickers, 16\u00a0mm across: (.*) To start/.exec(said)?.[1] ?? '';
    const counts = [...stickers.matchAll(/(\d+) [a-z]+/g)];
    // Three sheets of two tasks with one shared colour: six stickers.
    expect(counts.reduce((sum, [, count]) => sum + Number(count), 0)).toBe(6);
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
