// The same sheets in several worlds: Node and Chromium, in two time zones and two languages of the machine.
import { fork } from 'node:child_process';
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { build } from 'vite';
import { SCRIPTS } from '../../src/page/index.ts';
import { SCRIPT_FONTS } from '../../src/shaping/index.ts';
import { serveWeb } from '../serve.mjs';
import type { Bundle, World } from './world.ts';

const ROOT = process.cwd();
const { resolve } = createRequire(join(ROOT, 'package.json'));
const CHROMIUM = {
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-quic', '--disable-background-networking'],
};

/** A place far east whose small i has no capital I, and one with half an hour and digits of its own. */
const FAR_EAST = { locale: 'tr-TR', timeZone: 'Pacific/Kiritimati' } as const;
const HALF_HOUR = { locale: 'ar-EG', timeZone: 'America/St_Johns' } as const;
type Place = typeof FAR_EAST | typeof HALF_HOUR;

interface Where {
  readonly program: 'Node' | 'Chromium';
  readonly place: Place;
}

/** Both programs in both places: tells what a difference comes from. */
export const EVERYWHERE: readonly Where[] = [
  { program: 'Node', place: FAR_EAST },
  { program: 'Chromium', place: FAR_EAST },
  { program: 'Node', place: HALF_HOUR },
  { program: 'Chromium', place: HALF_HOUR },
];

/** Another program in another place: meets any difference with half the work. */
export const CROSSWISE: readonly Where[] = [
  { program: 'Node', place: FAR_EAST },
  { program: 'Chromium', place: HALF_HOUR },
];

export interface Named {
  /** Program and place. */
  readonly name: string;
  readonly world: World;
}

/** The worlds, all made at the same time; refused where one is not in the place it was sent to. */
export async function makeWorlds(
  bundles: readonly Bundle[],
  wheres: readonly Where[],
): Promise<readonly Named[]> {
  const built = join(ROOT, 'dist', `everywhere-${process.pid}`);
  try {
    await Promise.all([buildForNode(join(built, 'node')), buildForBrowser(join(built, 'web'))]);
    const [served, browser] = await Promise.all([
      serveWeb({ folder: join(built, 'web') }),
      chromium.launch(CHROMIUM),
    ]);
    try {
      const versions = { Node: process.version, Chromium: browser.version() };
      return await Promise.all(
        wheres.map(async ({ program, place }) => {
          const name = `${program} ${versions[program]}, ${place.locale}, ${place.timeZone}`;
          const coming =
            program === 'Node'
              ? worldInNode(join(built, 'node'), bundles, place)
              : worldInChromium(browser, served.address, bundles, place);
          return { name, world: inPlace(name, place, await coming) };
        }),
      );
    } finally {
      await Promise.all([browser.close(), served.close()]);
    }
  } finally {
    rmSync(built, { recursive: true, force: true });
  }
}

function inPlace(name: string, { locale, timeZone }: Place, world: World): World {
  if (world.locale === locale && world.timeZone === timeZone) return world;
  throw new Error(`${name}: expected to be there, is in ${world.locale}, ${world.timeZone}`);
}

function worldInNode(
  folder: string,
  bundles: readonly Bundle[],
  { locale, timeZone }: Place,
): Promise<World> {
  const posix = `${locale.replace('-', '_')}.UTF-8`;
  const env = { ...process.env, TZ: timeZone, LANG: posix, LC_ALL: posix, LANGUAGE: posix };
  const child = fork(join(folder, 'in-node.js'), [], { cwd: ROOT, env, execArgv: [] });
  child.send(bundles);
  return new Promise((given, refused) => {
    child.once('message', (world) => given(world as World));
    child.once('close', (code) =>
      refused(new Error(`Node, ${locale}: left ${code} with no world`)),
    );
  });
}

async function worldInChromium(
  browser: Browser,
  address: string,
  bundles: readonly Bundle[],
  { locale, timeZone }: Place,
): Promise<World> {
  const context = await browser.newContext({ locale, timezoneId: timeZone });
  const page = await context.newPage();
  await page.goto(address);
  return page.evaluate(
    `(async () => {
      const { makeWorld } = await import('${address}world.js');
      const read = async (file) => new Uint8Array(await (await fetch('files/' + file)).arrayBuffer());
      const [regular, bold] = await Promise.all(
        ['Regular', 'Bold'].map((weight) => read('assets/fonts/Andika-' + weight + '.ttf')),
      );
      return makeWorld(${JSON.stringify(bundles)}, { fonts: { regular, bold }, read });
    })()`,
  );
}

const USUAL = { root: ROOT, configFile: false, publicDir: false, logLevel: 'error' } as const;

/** As the command line is built: the PDF library stays where its package is. */
async function buildForNode(outDir: string): Promise<void> {
  await build({
    ...USUAL,
    ssr: { noExternal: true, external: ['pdfkit', 'fontkit', 'harfbuzzjs'] },
    build: {
      ssr: 'scripts/everywhere/in-node.ts',
      outDir,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: 'in-node.js', chunkFileNames: '[name].js' } },
    },
  });
}

/** As the app is built, with the fonts beside it. */
async function buildForBrowser(outDir: string): Promise<void> {
  await build({
    ...USUAL,
    base: './',
    build: {
      outDir,
      assetsInlineLimit: 0,
      minify: false,
      target: 'es2022',
      rolldownOptions: {
        input: 'scripts/everywhere/world.ts',
        external: ['module'],
        preserveEntrySignatures: 'strict',
        output: { entryFileNames: 'world.js' },
      },
    },
  });
  writeFileSync(join(outDir, 'index.html'), '<!doctype html><title>worlds</title>');
  for (const { regular, bold } of SCRIPTS.map((script) => SCRIPT_FONTS[script])) {
    for (const file of [regular, bold]) {
      const to = join(outDir, 'files', file);
      mkdirSync(dirname(to), { recursive: true });
      cpSync(file.startsWith('assets/') ? join(ROOT, file) : resolve(file), to);
    }
  }
}
