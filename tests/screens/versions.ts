// A folder that is served, first with one version of the app and then with a later one; tabs of one browser on it.
import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { buildWeb, WEB_FOLDER } from '../../scripts/build-web.mjs';
import { addServiceWorker } from '../../scripts/installable.ts';

const TEXTS = ['.html', '.js', '.css', '.webmanifest'];

export interface Site {
  readonly folder: string;
  /** Puts the present build in place of whatever is there. */
  readonly publishFirst: () => void;
  /**
   * Puts a version in place of the present one in which each file but the page has another name; cut off, one of them
   * is not as it should be.
   */
  readonly publishLater: (how?: { readonly isCutOff: boolean }) => Promise<void>;
  readonly remove: () => void;
}

/**
 * A site with the present build, in `under` of the folder that is served. Each version lies in a folder of its own and
 * stays, since a request for one of its files may be on the way; what is served is a link that leads to the newest.
 */
export function newSite(under = ''): Site {
  if (!buildWeb()) throw new Error('the app could not be built');
  const root = mkdtempSync(join(tmpdir(), 'samewise-site-'));
  const served = join(root, 'served');
  let versions = 0;
  const newVersion = () => {
    versions += 1;
    return join(root, String(versions));
  };
  const serve = (version: string) => {
    const link = `${served}-next`;
    symlinkSync(version, link);
    renameSync(link, served);
  };
  const publishFirst = () => {
    const version = newVersion();
    cpSync(WEB_FOLDER, join(version, under), { recursive: true });
    serve(version);
  };
  publishFirst();
  return {
    folder: served,
    publishFirst,
    publishLater: async ({ isCutOff } = { isCutOff: false }) => {
      const version = newVersion();
      const folder = join(version, under);
      cpSync(join(realpathSync(served), under), folder, { recursive: true });
      renameAll(folder);
      await addServiceWorker(folder);
      if (isCutOff) cutOff(join(folder, 'assets'));
      serve(version);
    },
    remove: () => rmSync(root, { recursive: true }),
  };
}

/** As where a copy to the server broke off. */
function cutOff(assets: string): void {
  const [script] = readdirSync(assets).filter((name) => name.startsWith('growth-screen'));
  if (script === undefined) throw new Error('versions › assets: expected the screen of Growth');
  writeFileSync(join(assets, script), '');
}

/** As if each file had changed: the same app under other names, and nothing left under the former ones. */
function renameAll(folder: string): void {
  const assets = join(folder, 'assets');
  const names = readdirSync(assets);
  const later = (name: string) => name.replace(/(\.[a-z0-9]+)$/, 'Later$1');
  for (const name of names) renameSync(join(assets, name), join(assets, later(name)));
  const texts = [
    ...readdirSync(assets).map((name) => join('assets', name)),
    ...readdirSync(folder),
  ];
  for (const name of texts.filter((each) => TEXTS.includes(extname(each)))) {
    const path = join(folder, name);
    const text = names.reduce(
      (now, each) => now.replaceAll(each, later(each)),
      readFileSync(path, 'utf8'),
    );
    writeFileSync(path, text);
  }
}

/** Waits until all files are in store, and the tab takes them from there. */
export async function untilStored(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}

/** The version that a tab runs on. */
export function versionOf(page: Page): Promise<string | undefined> {
  return page.evaluate(
    () => document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content,
  );
}

/** The versions in store. */
export function storedVersions(page: Page): Promise<readonly string[]> {
  return page.evaluate(async () =>
    (await caches.keys()).map((name) => name.split(' ').at(-1) ?? ''),
  );
}

/** Another tab of the same browser. */
export async function anotherTab(page: Page, address: string): Promise<Page> {
  const tab = await page.context().newPage();
  await tab.goto(address);
  return tab;
}

export function line(page: Page) {
  return page.getByText('A newer Samewise is ready.');
}

/** Presses the button of the line, and waits until the tab runs on the other version. */
export async function changeOver(page: Page): Promise<void> {
  const before = await versionOf(page);
  await page.getByRole('button', { name: 'Change over' }).click();
  await page.waitForFunction(
    (old) =>
      document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content !== old &&
      document.readyState === 'complete',
    before,
  );
}
