// Names in other scripts from the app: the same bytes as Node makes, nothing fetched unless it is needed, offline too; and
// each word as the browser itself sets it with the same font.
import { execFileSync } from 'node:child_process';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { SCRIPTS, textWidthMm, wordsPath } from '../../src/page/index.ts';
import { SCRIPT_FONTS } from '../../src/shaping/index.ts';
import { makePack, packPages, readChildren, readRecipe } from '../../src/sheets/index.ts';
import { pdfOf as pdfInNode } from '../outside/press-reading.ts';
import { fontFile, loadAllScripts, WORDS } from '../outside/script-fonts.ts';
import { startApp } from './app.ts';
import { pdfOf } from './files.ts';
import { untilStored } from './versions.ts';

const app = startApp();
const RECIPE = 'activity=odd-one-out&step=4&sheets=1&seed=3';
const NAMES = ['ليلى', 'אורי', 'आरव', 'Соня', 'Ελένη'];
const FONT = /\.(ttf|woff|wasm)$/;

beforeAll(loadAllScripts);

async function nameGroup(page: Page, names: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill(names.join('\n'));
}

async function pdfFromNode(): Promise<Uint8Array> {
  const recipe = readRecipe({
    format: 'samewise.recipe',
    version: 1,
    parts: [{ activity: 'odd-one-out', step: 4, sheets: 1 }],
  });
  const children = readChildren(NAMES.join('\n'), 'group');
  if (!recipe.ok || !children.ok) throw new Error('the recipe was refused');
  const pack = makePack({ ...recipe.value, seed: 3, children: children.value, sortedBy: 'child' });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  const { pages, ...facts } = packPages(pack.value);
  return pdfInNode(pages, facts);
}

test('a group with names in five scripts gets the same bytes as from Node, with every name', async () => {
  const page = await app.open(RECIPE);
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  await nameGroup(page, NAMES);
  const { bytes } = await pdfOf(page);
  const text = execFileSync('pdftotext', ['-', '-'], { input: bytes, encoding: 'utf8' });
  for (const name of NAMES) expect(text.split(name).length - 1, name).toBeGreaterThanOrEqual(3);
  expect(said).toEqual([]);
  expect(bytes.equals(await pdfFromNode())).toBe(true);
});

test('only the fonts of the scripts that are there are fetched, and none for names in the usual letters', async () => {
  const page = await app.open(RECIPE);
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(new URL(request.url()).pathname));
  await nameGroup(page, ['Zoë', 'Łucja']);
  await pdfOf(page);
  expect(asked.filter((path) => /\.(woff|wasm)$|shaping/.test(path))).toEqual([]);
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill('आरव');
  await pdfOf(page);
  const fetched = asked.filter((path) => FONT.test(path) && !path.includes('Andika'));
  expect(fetched.map((path) => path.replace(/.*\/|-[^-]*$/g, '')).sort()).toEqual([
    'harfbuzz',
    'noto-sans-devanagari-devanagari-400-normal',
    'noto-sans-devanagari-devanagari-700-normal',
  ]);
});

test('names in other scripts are printed with the network off, though none was before', async () => {
  const first = await app.open(RECIPE, { serviceWorkers: 'allow' });
  await untilStored(first);
  const context = first.context();
  await context.setOffline(true);
  await first.close();
  const page = await context.newPage();
  await page.goto(`${app.address()}#${RECIPE}`);
  await nameGroup(page, ['ليلى']);
  const { bytes } = await pdfOf(page);
  expect(execFileSync('pdftotext', ['-', '-'], { input: bytes, encoding: 'utf8' })).toContain(
    'ليلى',
  );
});

/** Side of the em in pixels: above 256 the browser draws text by its outlines, without fitting it to pixels. */
const EM = 300;

describe('each word is as the browser itself sets it with the same font', () => {
  test.each(SCRIPTS)('%s', async (script) => {
    const page = await app.blank();
    const file = SCRIPT_FONTS[script].regular;
    const font = Buffer.from(fontFile(file)).toString('base64');
    await page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (each) => each.charCodeAt(0));
      const face = await new FontFace('Tested', bytes.buffer).load();
      (document.fonts as unknown as Set<FontFace>).add(face);
    }, font);
    for (const word of WORDS[script]) {
      const path = wordsPath(word, 'regular')
        .map(([letter, ...places]) => `${letter}${places.map((em) => em * EM).join(' ')}`)
        .join('');
      const shared = await page.evaluate(sharedInk, {
        word: word.normalize('NFC'),
        path,
        em: EM,
        width: textWidthMm(word, EM),
      });
      expect(shared, word).toBeGreaterThanOrEqual(0.97);
    }
  });
});

/** Runs in the browser: ink that the path and the browser's own text share, as a share of all ink of both. */
function sharedInk(asked: { word: string; path: string; em: number; width: number }): number {
  const inkOf = (draw: (context: CanvasRenderingContext2D) => void) => {
    const canvas = document.createElement('canvas');
    canvas.width = Math.ceil(asked.width + 2 * asked.em);
    canvas.height = 3 * asked.em;
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    context.translate(asked.em, 2 * asked.em);
    draw(context);
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
    return data.filter((_, place) => place % 4 === 3);
  };
  const ours = inkOf((context) => context.fill(new Path2D(asked.path)));
  const theirs = inkOf((context) => {
    context.font = `${asked.em}px Tested`;
    context.fontKerning = 'normal';
    context.textAlign = 'left';
    context.fillText(asked.word, 0, 0);
  });
  let [both, either] = [0, 0];
  for (const [place, alpha] of ours.entries()) {
    both += Math.min(alpha, theirs[place] ?? 0);
    either += Math.max(alpha, theirs[place] ?? 0);
  }
  return both / either;
}
