// What makes the built app one that can be installed and works offline: its manifest, its icons, its service worker.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { build, type HtmlTagDescriptor, type Plugin } from 'vite';

const INDEX = 'index.html';
const MANIFEST = 'manifest.webmanifest';
const WORKER = 'sw.js';
const LOOK = new URL('../src/web/look/', import.meta.url);
const WORKER_SOURCE = new URL('../src/web/offline/sw.ts', import.meta.url).pathname;

/** The page names its version, so that what it is made of stays in store as long as it is open. */
const VERSION_TAG = /<meta name="version" content="[^"]*"/;
const VERSION_CHARACTERS = 16;

/** Side of the drawing in icon.svg, and that of an icon which may be cut to a circle of 0.8 of its side. */
const DRAWN = 32;
const MASKED = 50;

const NAME = 'Samewise';
const DESCRIPTION =
  'Sheets for children of three to five to practise seeing what is the same and what is different, made and proven on your own machine.';

const ICONS = [
  { name: 'icon-192.png', side: 192, purpose: 'any' },
  { name: 'icon-512.png', side: 512, purpose: 'any' },
  { name: 'icon-maskable-512.png', side: 512, purpose: 'maskable' },
] as const;

/** Adds all of it to a build of the app. */
export function installable(): Plugin {
  let folder = '';
  return {
    name: 'samewise-installable',
    apply: 'build',
    configResolved: (config) => {
      folder = resolve(config.root, config.build.outDir);
    },
    buildStart() {
      for (const icon of ICONS) {
        this.emitFile({ type: 'asset', name: icon.name, source: iconPng(icon) });
      }
    },
    transformIndexHtml: { order: 'post', handler: () => tags() },
    generateBundle(_options, bundle) {
      const named = Object.values(bundle).flatMap((file) =>
        file.type === 'asset' ? file.names.map((name) => [name, file.fileName] as const) : [],
      );
      this.emitFile({
        type: 'asset',
        fileName: MANIFEST,
        source: manifestText(new Map(named)),
      });
    },
    closeBundle: () => addServiceWorker(folder),
  };
}

/** Writes the service worker of a folder that holds a build, and the version into its page. */
export async function addServiceWorker(folder: string): Promise<void> {
  const page = readFileSync(join(folder, INDEX), 'utf8');
  const names = filesUnder(folder).filter((name) => name !== WORKER && name !== INDEX);
  const facts = names.map((name) => [name, integrityOf(readFileSync(join(folder, name)))] as const);
  const unversioned = page.replace(VERSION_TAG, '');
  const version = createHash('sha256')
    .update(JSON.stringify([facts, unversioned]))
    .digest('hex')
    .slice(0, VERSION_CHARACTERS);
  const versioned = page.replace(VERSION_TAG, `<meta name="version" content="${version}"`);
  writeFileSync(join(folder, INDEX), versioned);
  // The page goes by the address of its folder: some servers send on from its own name.
  await buildWorker(folder, version, [['./', integrityOf(versioned)], ...facts]);
}

async function buildWorker(
  outDir: string,
  version: string,
  files: readonly (readonly [name: string, integrity: string])[],
): Promise<void> {
  await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: { SAMEWISE_VERSION: JSON.stringify(version), SAMEWISE_FILES: JSON.stringify(files) },
    build: {
      outDir,
      emptyOutDir: false,
      target: 'es2022',
      lib: { entry: WORKER_SOURCE, formats: ['iife'], name: 'worker', fileName: () => WORKER },
    },
  });
}

/** As Subresource Integrity writes it; the worker stores no file that is another than this. */
function integrityOf(content: string | Buffer): string {
  return `sha256-${createHash('sha256').update(content).digest('base64')}`;
}

/** Names from the folder on, in a fixed order. */
function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(resolve(folder).length + 1))
    .map((name) => name.replaceAll('\\', '/'))
    .sort();
}

function tags(): HtmlTagDescriptor[] {
  const injectTo = 'head';
  const [light, dark] = grounds();
  const colour = (content: string, scheme: string) => ({
    tag: 'meta',
    injectTo: 'head' as const,
    attrs: { name: 'theme-color', media: `(prefers-color-scheme: ${scheme})`, content },
  });
  return [
    { tag: 'meta', injectTo, attrs: { name: 'version', content: '' } },
    colour(light, 'light'),
    colour(dark, 'dark'),
    { tag: 'link', injectTo, attrs: { rel: 'manifest', href: `./${MANIFEST}` } },
  ];
}

function manifestText(nameOf: ReadonlyMap<string, string>): string {
  const [ground] = grounds();
  const manifest = {
    name: NAME,
    short_name: NAME,
    description: DESCRIPTION,
    lang: 'en',
    start_url: './',
    scope: './',
    display: 'standalone',
    theme_color: ground,
    background_color: ground,
    icons: ICONS.map(({ name, side, purpose }) => ({
      src: nameOf.get(name) ?? missing(name),
      sizes: `${side}x${side}`,
      type: 'image/png',
      purpose,
    })),
  };
  return `${JSON.stringify(manifest, undefined, 2)}\n`;
}

function missing(what: string): never {
  throw new Error(`installable › ${what}: expected it in the build`);
}

/** The colour of the table by day and by night, from the tokens of the app. */
function grounds(): readonly [day: string, night: string] {
  const tokens = readFileSync(new URL('ground.css', LOOK), 'utf8');
  const [day, night] = [...tokens.matchAll(/--table: (#[0-9a-f]{6});/g)].map(([, hex]) => hex);
  return [day ?? missing('--table by day'), night ?? missing('--table by night')];
}

/** The icon as PNG, the same bytes each time; one that may be cut lies small on the colour of the table. */
function iconPng({ side, purpose }: (typeof ICONS)[number]): Buffer {
  const drawing = readFileSync(new URL('icon.svg', LOOK), 'utf8');
  const svg = purpose === 'any' ? drawing : onTable(drawing);
  return new Resvg(svg, { fitTo: { mode: 'width', value: side } }).render().asPng();
}

function onTable(drawing: string): string {
  const [ground] = grounds();
  const margin = (MASKED - DRAWN) / 2;
  const inner = drawing.replace(
    '<svg ',
    `<svg x="${margin}" y="${margin}" width="${DRAWN}" height="${DRAWN}" `,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${MASKED} ${MASKED}"><rect width="${MASKED}" height="${MASKED}" fill="${ground}" />${inner}</svg>`;
}
