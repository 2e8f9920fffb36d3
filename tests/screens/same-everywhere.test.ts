// One code, one sheet: the same bytes in Node and in Chromium, in two time zones and two languages of the machine.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { activityOf } from '../../src/activities/index.ts';
import { LANGUAGES } from '../../src/languages/index.ts';
import { SCRIPTS } from '../../src/page/index.ts';
import { SCRIPT_FONTS } from '../../src/shaping/index.ts';
import { readCode } from '../../src/sheets/index.ts';
import { fontFile } from '../outside/script-fonts.ts';
import { startApp } from './app.ts';
import { bundlesOfCodes } from './same-everywhere-codes.ts';
import type { World } from './same-everywhere-entry.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'samewise-everywhere-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A place far east whose small i has no capital I, and one with half an hour and digits of its own. */
const PLACES = [
  { locale: 'tr-TR', timeZone: 'Pacific/Kiritimati' },
  { locale: 'ar-EG', timeZone: 'America/St_Johns' },
] as const;
type Place = (typeof PLACES)[number];

const bundles = bundlesOfCodes();
const codes = bundles.flatMap((bundle) => bundle.codes);
const app = startApp({ build: siteOfWorlds });

/** The entry as the app is built, with the fonts beside it. */
async function siteOfWorlds(): Promise<string> {
  const site = join(folder, 'site');
  await build({
    configFile: false,
    root: ROOT,
    base: './',
    logLevel: 'error',
    build: {
      outDir: site,
      assetsInlineLimit: 0,
      minify: false,
      target: 'es2022',
      rolldownOptions: {
        input: fileURLToPath(new URL('same-everywhere-entry.ts', import.meta.url)),
        external: ['module'],
        preserveEntrySignatures: 'strict',
        output: { entryFileNames: 'entry.js' },
      },
    },
  });
  writeFileSync(join(site, 'index.html'), '<!doctype html><title>worlds</title>');
  for (const file of SCRIPTS.flatMap((script) => Object.values(SCRIPT_FONTS[script]))) {
    if (!/\.(woff|ttf)$/.test(file)) continue;
    const to = join(site, 'files', file);
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, fontFile(file as Parameters<typeof fontFile>[0]));
  }
  return site;
}

async function worldInNode({ locale, timeZone }: Place): Promise<World> {
  const [from, to] = [join(folder, 'bundles.json'), join(folder, `${locale}.json`)];
  writeFileSync(from, JSON.stringify(bundles));
  const posix = `${locale.replace('-', '_')}.UTF-8`;
  const env = { ...process.env, TZ: timeZone, LANG: posix, LC_ALL: posix, LANGUAGE: posix };
  const script = join(ROOT, 'tests', 'screens', 'same-everywhere-node.ts');
  const words = [join(ROOT, 'scripts', 'run.mjs'), script, from, to];
  const child = spawn(process.execPath, words, { cwd: ROOT, env, stdio: 'inherit' });
  const code = await new Promise((resolve) => child.on('close', resolve));
  expect(code).toBe(0);
  return JSON.parse(readFileSync(to, 'utf8'));
}

async function worldInBrowser({ locale, timeZone }: Place): Promise<World> {
  const page = await app.blank({ locale, timezoneId: timeZone });
  await page.goto(app.address());
  return page.evaluate(
    `(async () => {
      const { makeWorld } = await import('${app.address()}entry.js');
      const read = async (file) => new Uint8Array(await (await fetch('files/' + file)).arrayBuffer());
      const [regular, bold] = await Promise.all(
        ['Regular', 'Bold'].map((weight) => read('assets/fonts/Andika-' + weight + '.ttf')),
      );
      return makeWorld(${JSON.stringify(bundles)}, { fonts: { regular, bold }, read });
    })()`,
  );
}

const worlds = new Map<string, World>();
beforeAll(async () => {
  for (const place of PLACES) {
    worlds.set(`Node, ${place.locale}`, await worldInNode(place));
    worlds.set(`Chromium, ${place.locale}`, await worldInBrowser(place));
  }
}, 1_200_000);

test('the codes are of every activity, many steps, every content and language', () => {
  expect(new Set(codes).size).toBe(500);
  expect(new Set(bundles.map(({ language }) => language)).size).toBe(LANGUAGES.length);
  const specs = codes.map((code) => {
    const spec = readCode(code);
    if (!spec.ok) throw new Error(code);
    return spec.value;
  });
  for (const activity of new Set(specs.map((spec) => spec.activity))) {
    const own = specs.filter((spec) => spec.activity === activity);
    expect(own.length, activity).toBeGreaterThan(20);
    const steps = new Set(own.map(({ step }) => step));
    expect(steps.size, activity).toBe(Math.min(activityOf(activity).ladder.length, own.length));
  }
});

test('each world is really somewhere else', () => {
  const said = [...worlds.values()].map(({ locale, timeZone }) => ({ locale, timeZone }));
  expect(said).toEqual(PLACES.flatMap((place) => [place, place]));
  const written = [...worlds.values()].map((world) => world.written);
  expect(written[0]).not.toBe(written[2]);
});

test('every sheet is the same, byte for byte, as pages and in a PDF', () => {
  const [[, first], ...others] = [...worlds] as [[string, World], ...[string, World][]];
  expect(Object.keys(first.sheets)).toEqual(codes);
  expect(first.pdfs).toHaveLength(bundles.length);
  // Different sheets give different bytes: the hashes are of what they should be of.
  expect(new Set(Object.values(first.sheets)).size).toBe(500);
  expect(new Set(first.pdfs).size).toBe(bundles.length);
  expect(others).toHaveLength(3);
  for (const [name, { sheets, pdfs }] of others) {
    const unlike = codes.filter((code) => sheets[code] !== first.sheets[code]);
    expect(unlike, name).toEqual([]);
    expect(pdfs, name).toEqual(first.pdfs);
  }
});
