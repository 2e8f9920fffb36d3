// What the adult's page promises: everything an adult needs beside the child, on few pages, nothing cut or over an edge.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../activities/index.ts';
import { pathBounds } from '../base/index.ts';
import { colourName } from '../figures/index.ts';
import { loadCatalogue } from '../languages/index.ts';
import {
  CHECK_LINE_MM,
  HOME_PAPERS,
  ORIENTATIONS,
  type Page,
  type PageChoice,
  type SceneNode,
  textWidthMm,
} from '../page/index.ts';
import { initialOf } from '../palette/index.ts';
import { adultPages } from './adult-page.ts';
import { FRAMEWORKS } from './goals.ts';
import { makePack } from './make-pack.ts';
import type { Pack } from './pack.ts';
import { packParts } from './pack-parts.ts';
import { overEdge, words } from './pages-to-test.ts';
import { printedColours } from './printed-colours.ts';

const A4: PageChoice = { paper: 'A4', orientation: 'portrait' };
const PAGES = HOME_PAPERS.flatMap((paper) =>
  ORIENTATIONS.map((orientation) => ({ paper, orientation })),
);
/** Small adult words are readable down to this em, in mm. */
const LEAST_EM_MM = 3.3;

/** Languages whose letters the first font has. */
const LATIN = ['en', 'es'] as const;

interface Wanted {
  readonly step?: number;
  readonly sheets?: number;
  readonly page?: PageChoice;
  readonly goals?: Pack['goals'];
  readonly print?: 'colour' | 'grey';
}

function tryPack(
  activities: readonly ActivityId[],
  { step = 1, sheets = 1, page = A4, goals = [], print = 'colour' }: Wanted = {},
) {
  const parts = activities.map((activity) => ({ activity, step, values: {}, sheets }));
  return makePack({ seed: 3, page, print, parts, goals });
}

function packOf(activities: readonly ActivityId[], wanted: Wanted = {}): Pack {
  const pack = tryPack(activities, wanted);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value;
}

const allWords = (pages: readonly Page[]) => pages.map(words).join(' ');

function textNodes(nodes: readonly SceneNode[]): Extract<SceneNode, { kind: 'text' }>[] {
  return nodes.flatMap((node) => {
    if (node.kind === 'text') return [node];
    return node.kind === 'group' ? textNodes(node.children) : [];
  });
}

describe('the adult’s page', () => {
  it.each(LATIN)(
    'names the colours whose letters stand on sheets in grey, %s',
    async (language) => {
      await loadCatalogue(language);
      const said = (print: 'colour' | 'grey') => {
        const pack = packOf(['in-every-box'], { print });
        const colours = new Set(pack.sheets.flatMap(({ tasks }) => tasks.flatMap(printedColours)));
        const pages = allWords(adultPages(pack, language));
        return [...colours].map((colour) =>
          pages.includes(`${colourName(colour, language)} (${initialOf(colour)})`),
        );
      };
      expect(said('grey').length).toBeGreaterThan(1);
      expect(said('grey')).not.toContain(false);
      expect(said('colour')).not.toContain(true);
    },
  );

  it('says what to lay out, to say, to show, to help with, to look for, to measure, and to take care of', () => {
    const said = allWords(adultPages(packOf(['in-every-box'])));
    for (const part of [
      'Lay out',
      'When to stop',
      'To start',
      'Say',
      'Show',
      'Help',
      'Easier',
      'Harder',
      'Look for',
      'Takes about 3 minutes',
      'True size',
      'Help, from least to most',
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

  it('gives as a time of attention only the published one, with its source', () => {
    const said = allWords(adultPages(packOf(['in-every-box'])));
    expect(said).toMatch(/5 to 10\u00a0minutes \(CDC, “Learn the Signs”, 2022\)/);
    expect(said).toContain('no figure has been published');
  });

  it('goes from least help to most: again, where to look, shown, together, by hand if wanted', () => {
    const said = allWords(adultPages(packOf(['in-every-box'])));
    expect(said).toMatch(
      /1 .*say it again.*2 Point out.*3 Show.*4 Do one together.*5 Lead the hand only if the child wants it/,
    );
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
    for (const page of PAGES) {
      const [first] = adultPages(packOf(ACTIVITY_IDS, { page }));
      const [longest] = lines(first?.nodes ?? []).sort((one, other) => other - one);
      expect(longest).toBeCloseTo(50, 9);
    }
    expect(CHECK_LINE_MM).toBe(50);
  });

  it('cuts a long list of sheets off and says how many more there are', () => {
    const { sheets } = packOf(['in-every-box'], { sheets: 2 });
    const pages = adultPages({ sheets: Array.from({ length: 400 }, () => sheets).flat() });
    expect(pages).toHaveLength(1);
    expect(words(pages[0])).toMatch(/and \d+ more sheets, each with its code at the foot/);
    for (const page of pages) expect(overEdge(page)).toEqual([]);
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
    const pack = makePack({ seed: 1, page: A4, print: 'colour', parts });
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    const said = words(adultPages(pack.value)[0]);
    const stickers = /Stickers, 16\u00a0mm across: (.*) When to stop/.exec(said)?.[1] ?? '';
    const counts = [...stickers.matchAll(/(\d+) [a-z]+/g)];
    // Three sheets of two tasks with one shared colour: six stickers.
    expect(counts.reduce((sum, [, count]) => sum + Number(count), 0)).toBe(6);
  });
});

describe.each(PAGES)('on $paper $orientation', (page) => {
  it('a pack of ten sheets of one kind stands on one page', () => {
    const counts = ACTIVITY_IDS.flatMap((activity) => {
      const { length } = activityOf(activity).ladder;
      return [1, Math.ceil(length / 2), length].flatMap((step) => {
        const pack = tryPack([activity], { step, page });
        // The last steps of some have no room on paper that lies.
        if (!pack.ok) return [];
        const sheets = Array.from({ length: 10 }, () => pack.value.sheets).flat();
        return [{ activity, step, pages: adultPages({ sheets }).length }];
      });
    });
    expect(counts.length).toBeGreaterThan(2 * ACTIVITY_IDS.length);
    expect(counts.filter(({ pages }) => pages > 1)).toEqual([]);
  });

  it.each([1, 2, 5, ACTIVITY_IDS.length])(
    'a pack of %i kinds takes a page more for two kinds at most, keeps the margins and cuts nothing',
    (kinds) => {
      const pack = packOf(ACTIVITY_IDS.slice(0, kinds), { step: 5, page });
      const pages = adultPages(pack);
      expect(pages.length).toBeLessThanOrEqual(1 + Math.floor(kinds / 2));
      for (const each of pages) {
        expect(overEdge(each), each.title).toEqual([]);
        for (const { text, emMm } of textNodes(each.nodes)) {
          expect(emMm, text).toBeGreaterThanOrEqual(LEAST_EM_MM);
          expect(text).not.toContain('…');
        }
      }
      const said = allWords(pages);
      for (const { code } of pack.sheets) expect(said).toContain(code);
      for (const part of packParts(pack, 'en')) {
        const told = [...part.say, part.show, ...part.help, part.easierNow, part.harderNow];
        for (const sentence of [...told, ...part.lookFor]) expect(said).toContain(sentence);
      }
    },
  );

  it('no two lines of words touch', () => {
    for (const each of adultPages(packOf(ACTIVITY_IDS, { step: 5, page, goals: FRAMEWORKS }))) {
      expect(touching(each), each.title).toEqual([]);
    }
  });
});

/** Pairs of texts that stand on each other, as words for the message; texts here are not turned or scaled. */
function touching({ nodes }: Page): string[] {
  const boxes = placedTexts(nodes, 0, 0);
  return boxes.flatMap((one, place) =>
    boxes
      .slice(place + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          Math.abs(one.baseline - other.baseline) < Math.min(one.emMm, other.emMm),
      )
      .map((other) => `${one.text} | ${other.text}`),
  );
}

function placedTexts(nodes: readonly SceneNode[], x: number, y: number): PlacedText[] {
  return nodes.flatMap((node) => {
    if (node.kind === 'shape') return [];
    if (node.kind === 'group') {
      const [, , , , right = 0, down = 0] = node.transform ?? [];
      return placedTexts(node.children, x + right, y + down);
    }
    const width = textWidthMm(node.text, node.emMm, node.weight);
    const left = x + node.xMm - { start: 0, middle: width / 2, end: width }[node.anchor];
    const { text, emMm } = node;
    return [{ text, emMm, left, right: left + width, baseline: y + node.baselineMm }];
  });
}

interface PlacedText {
  readonly text: string;
  readonly emMm: number;
  readonly left: number;
  readonly right: number;
  readonly baseline: number;
}

describe('goals of curricula', () => {
  it('are named only where a pack asks for them, each with its published identifier', () => {
    const activities = ['continue-row', 'size-order'] as const;
    const without = allWords(adultPages(packOf(activities)));
    for (const word of ['Goals', 'P-ATL', 'NCF-FS']) expect(without).not.toContain(word);
    const goals = ['head-start', 'ncf-fs'] as const;
    const said = allWords(adultPages(packOf(activities, { goals })));
    expect(said).toContain('our own reading');
    expect(said).toContain('P-MATH\u00a07: simple patterns (sheet 1)');
    expect(said).toContain('C-8.2: sees and continues patterns (sheet 1)');
    expect(said).not.toContain('EYFS');
  });
});
