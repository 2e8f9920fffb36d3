// How much ink a page is said to carry, against the pages as poppler's pdftoppm draws them, counted pixel by pixel.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../../src/activities/index.ts';
import {
  INKS,
  type Page,
  type Paint,
  PRINT_CHOICES,
  type SceneNode,
} from '../../src/page/index.ts';
import { coverageOf } from '../../src/press/index.ts';
import { DEFAULT_PAGE, makeSheet, sheetPage } from '../../src/sheets/index.ts';
import { testSeed } from '../seed.ts';
import { IS_WHOLE } from '../whole.ts';
import { adultPageOf, figuresPageOf, specimenPages } from './press-pages.ts';
import { pdfOf } from './press-reading.ts';

/** Each content at one of two steps, the first and the last, in one of both prints and both inks; in the night at both, in all. */
const DPI = IS_WHOLE ? 300 : 150;
/** Of the page; lines come out up to a pixel wider than asked for, as printers' programs fit them to pixels. */
const MOST_OFF = 0.003;
/** For one activity in the night. */
const LONGEST_MS = 3_600_000;

const seed = testSeed('ink coverage');
const differences: number[] = [];

describe('the ink of a page, as pixels show it', () => {
  test('is what is told of letters, of figures in every fill, of an adult page', async () => {
    await expectInk([figuresPageOf(), adultPageOf(), ...specimenPages()]);
  });

  test.each(ACTIVITY_IDS)(
    'is what is told of %s with every content',
    async (id) => {
      await expectInk(pagesOf(id));
    },
    LONGEST_MS,
  );

  test('would not be so if white over ink were counted', async () => {
    const [share = 0] = await inkShares([figuresPageOf()]);
    expect(Math.abs(coverageOf(withoutWhite(figuresPageOf())) - share)).toBeGreaterThan(MOST_OFF);
  });
});

afterAll(() => {
  const largest = Math.max(...differences);
  console.log(
    `${differences.length} pages, off by at most ${(100 * largest).toFixed(3)} % of the page`,
  );
});

async function expectInk(pages: readonly Page[]): Promise<void> {
  const counted = await inkShares(pages);
  expect(counted.length).toBe(pages.length);
  for (const [index, page] of pages.entries()) {
    const off = Math.abs(coverageOf(page) - (counted[index] ?? 0));
    differences.push(off);
    expect(off, page.title).toBeLessThan(MOST_OFF);
  }
}

/** Each content that they can have at the first step or the last, which the seed tells, or at both. */
function pagesOf(id: ActivityId): Page[] {
  const { ladder, parameters } = activityOf(id);
  const { content } = parameters;
  const contents = content?.kind === 'choice' ? content.values : [undefined];
  const ways = PRINT_CHOICES.flatMap((print) => INKS.map((ink) => ({ print, ink })));
  const asked = contents.flatMap((name) => [1, ladder.length].map((step) => ({ name, step })));
  return asked.flatMap(({ name, step }, index) => {
    // Two contents at one end, the next two at the other, so that all ways to print come in turn.
    const isInTurn = index % 2 === (Math.floor(index / 4) + seed) % 2;
    if (!IS_WHOLE && !isInTurn) return [];
    const chosen = IS_WHOLE ? ways : ways.filter((_, way) => way === (index + seed) % ways.length);
    return chosen.flatMap(({ print, ink }) => {
      const made = makeSheet({
        activity: id,
        step,
        values: name === undefined ? {} : { content: name },
        seed: seed + index,
        page: DEFAULT_PAGE,
        print,
        ...(ink === 'saving' ? { ink } : {}),
      });
      return made.ok ? [sheetPage(made.value)] : [];
    });
  });
}

/** All but white is made black, so that how dark a pixel is tells how much of it is inked. */
async function inkShares(pages: readonly Page[]): Promise<readonly number[]> {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-ink-'));
  try {
    const black = pages.map((page) => ({ ...page, nodes: page.nodes.map(blackened) }));
    writeFileSync(join(folder, 'in.pdf'), await pdfOf(black));
    const words = ['-gray', '-r', String(DPI), join(folder, 'in.pdf'), join(folder, 'page')];
    execFileSync('pdftoppm', words);
    const files = readdirSync(folder).filter((name) => name.endsWith('.pgm'));
    return files.toSorted().map((name) => darkShare(readFileSync(join(folder, name))));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function blackened(node: SceneNode): SceneNode {
  const black = (paint: Paint): Paint => (paint === '#ffffff' ? paint : '#000000');
  if (node.kind === 'group') return { ...node, children: node.children.map(blackened) };
  if (node.kind === 'text') return { ...node, colour: black(node.colour) };
  const { fill, stroke, ...shape } = node;
  return {
    ...shape,
    ...(fill ? { fill: black(fill) } : {}),
    ...(stroke ? { stroke: { ...stroke, colour: black(stroke.colour) } } : {}),
  };
}

function withoutWhite(page: Page): Page {
  const kept = (node: SceneNode): SceneNode[] => {
    if (node.kind === 'group') return [{ ...node, children: node.children.flatMap(kept) }];
    return node.kind === 'shape' && node.fill === '#ffffff' ? [] : [node];
  };
  return { ...page, nodes: page.nodes.flatMap(kept) };
}

/** Reads the plain binary form P5 of the Netpbm formats: the mean darkness of its pixels, 0 to 1. */
function darkShare(bytes: Buffer): number {
  const head = /^P5\s(\d+)\s(\d+)\s255\s/.exec(bytes.toString('latin1', 0, 40));
  if (!head) throw new Error('not a P5 image');
  const pixels = bytes.subarray(head[0].length);
  let darkness = 0;
  for (const value of pixels) darkness += 255 - value;
  return darkness / 255 / pixels.length;
}
