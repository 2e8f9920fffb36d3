// What a browser needs to install the app: a manifest that it can read, and icons as they are declared.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { WEB_FOLDER } from '../../scripts/build-web.mjs';
import { addServiceWorker } from '../../scripts/installable.ts';
import { startApp } from './app.ts';
import { newSite, untilStored } from './versions.ts';

interface ManifestIcon {
  readonly src: string;
  readonly sizes: string;
  readonly type: string;
  readonly purpose: string;
}

interface Manifest {
  readonly [member: string]: unknown;
  readonly icons: readonly ManifestIcon[];
}

const app = startApp();
const site = newSite();
afterAll(site.remove);

/** W3C, Web Application Manifest, "Display modes"; the values from memory. */
const DISPLAY_MODES = ['fullscreen', 'standalone', 'minimal-ui', 'browser'];
/** W3C, Web Application Manifest, "Icon masks and safe zone": two fifths of the side; from memory. */
const SAFE_RADIUS = 0.4;
/** W3C, Portable Network Graphics: width and height stand in the first chunk, as 32 bits each; from memory. */
const PNG_WIDTH_AT = 16;

async function manifestOf(): Promise<Manifest> {
  const response = await fetch(`${app.address()}manifest.webmanifest`);
  return (await response.json()) as Manifest;
}

test('the manifest has the members of the W3C Web Application Manifest, with values that it allows', async () => {
  const manifest = await manifestOf();
  const whole = expect.stringMatching(/\S/);
  expect(manifest).toMatchObject({ name: whole, short_name: 'Samewise', description: whole });
  expect(DISPLAY_MODES).toContain(manifest.display);
  expect(manifest.display).toBe('standalone');
  const address = `${app.address()}manifest.webmanifest`;
  const scope = new URL(String(manifest.scope), address).href;
  expect(scope).toBe(app.address());
  // The start must lie within the scope, or browsers take neither.
  expect(new URL(String(manifest.start_url), address).href.startsWith(scope)).toBe(true);
});

test('its colours are those of the table of the app, by day', async () => {
  const { theme_color, background_color } = await manifestOf();
  const page = await app.open('seed=7', { colorScheme: 'light' });
  const table = await page.evaluate(() =>
    getComputedStyle(document.documentElement).getPropertyValue('--table'),
  );
  expect([theme_color, background_color]).toEqual([table, table]);
});

test('each icon is a PNG of the size that is declared', async () => {
  const { icons } = await manifestOf();
  const declared = icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`);
  expect(declared).toEqual(['192x192 any', '512x512 any', '512x512 maskable']);
  for (const { src, sizes, type } of icons) {
    const response = await fetch(app.address() + src);
    expect(response.headers.get('content-type')).toBe(type);
    const bytes = Buffer.from(await response.arrayBuffer());
    expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG');
    const sides = [0, 4].map((offset) => bytes.readUInt32BE(PNG_WIDTH_AT + offset));
    expect(sides.join('x')).toBe(sizes);
  }
});

test('an icon that may be cut has nothing but its ground outside the safe zone', async () => {
  const { icons } = await manifestOf();
  const src = icons.find(({ purpose }) => purpose === 'maskable')?.src ?? '';
  const page = await app.open('seed=7');
  const outside = await page.evaluate(
    async ([address = '', radius = 0]: readonly [string, number]) => {
      const picture = await createImageBitmap(await (await fetch(address)).blob());
      const side = picture.width;
      const canvas = new OffscreenCanvas(side, side).getContext('2d');
      canvas?.drawImage(picture, 0, 0);
      const { data = new Uint8ClampedArray() } = canvas?.getImageData(0, 0, side, side) ?? {};
      const colours = new Set<string>();
      for (let at = 0; at < side * side; at++) {
        const x = (at % side) + 0.5 - side / 2;
        const y = Math.floor(at / side) + 0.5 - side / 2;
        if (Math.hypot(x, y) <= radius * side) continue;
        colours.add(data.slice(4 * at, 4 * at + 4).join(' '));
      }
      return [...colours];
    },
    [app.address() + src, SAFE_RADIUS] as const,
  );
  expect(outside).toHaveLength(1);
  expect(outside[0]).toMatch(/ 255$/);
});

test('the browser reads the manifest without a fault, and finds nothing in the way of installing', async () => {
  const page = await app.open('seed=7', { serviceWorkers: 'allow' });
  await untilStored(page);
  const devtools = await page.context().newCDPSession(page);
  const { errors, url } = await devtools.send('Page.getAppManifest');
  expect({ errors, url }).toEqual({ errors: [], url: `${app.address()}manifest.webmanifest` });
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // Tests run in windows that keep nothing, in which no app is ever installed.
  const faults = installabilityErrors.map(({ errorId }) => errorId);
  expect(faults.filter((fault) => fault !== 'in-incognito')).toEqual([]);
});

test('the same files give the same version and the same service worker', async () => {
  await addServiceWorker(site.folder);
  for (const name of ['index.html', 'sw.js']) {
    const [again, built] = [site.folder, WEB_FOLDER].map((folder) =>
      readFileSync(join(folder, name), 'utf8'),
    );
    expect(again).toBe(built);
  }
});
