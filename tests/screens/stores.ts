// A real browser with a real disk for the tests of the record store: each origin has a store of its own.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { build, type Rolldown } from 'vite';
import { afterAll, beforeAll } from 'vitest';
import type { Refusal, Result } from '../../src/base/index.ts';
import type { Draft, Entry } from '../../src/records/index.ts';

const ENTRY = new URL('./records-entry.ts', import.meta.url).pathname;

export const FERN: Draft = { kind: 'child', nickname: 'Fern' };

export interface Stores {
  /** A tab of an origin of that name; each test has its own, and so its own storage. */
  readonly tabOf: (name: string, path?: string) => Promise<Page>;
  /** Closes the browser and starts it again on the same disk. */
  readonly relaunch: () => Promise<void>;
  /** Kills the browser, which gets no word in, and starts it again on the same disk. */
  readonly kill: () => Promise<void>;
}

/** Starts the browser for the tests of the calling file, and clears its disk after them. */
export function startStores(): Stores {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-records-'));
  let context: BrowserContext;
  let script = '';
  beforeAll(async () => {
    script = await browserScript();
    context = await launched(folder, script);
  });
  afterAll(async () => {
    await context?.close();
    rmSync(folder, { recursive: true, force: true });
  });
  return {
    tabOf: async (name, path = '/') => {
      const page = await context.newPage();
      await page.goto(`http://${name}.localhost${path}`);
      await ready(page);
      return page;
    },
    relaunch: async () => {
      await context.close();
      context = await launched(folder, script);
    },
    kill: async () => {
      process.kill(await processOf(context), 'SIGKILL');
      await context.close().catch(() => {});
      context = await launched(folder, script);
    },
  };
}

/** The id of the browser's own process. */
async function processOf(context: BrowserContext): Promise<number> {
  const devtools = await context.browser()?.newBrowserCDPSession();
  const { processInfo = [] } = (await devtools?.send('SystemInfo.getProcessInfo')) ?? {};
  const { id } = processInfo.find(({ type }) => type === 'browser') ?? {};
  if (id === undefined) throw new Error('the browser does not say which process it is');
  return id;
}

async function browserScript(): Promise<string> {
  const built = (await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      write: false,
      minify: false,
      lib: { entry: ENTRY, formats: ['es'], fileName: 'kept' },
    },
  })) as Rolldown.RolldownOutput[];
  const [chunk] = built[0]?.output ?? [];
  if (!chunk) throw new Error('nothing was built');
  return chunk.code;
}

/** A browser whose data lie on the disk; what its pages ask for is answered by the test itself. */
async function launched(folder: string, script: string): Promise<BrowserContext> {
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-quic', '--disable-background-networking'],
  });
  await context.route('**/*', (route) => {
    const url = new URL(route.request().url());
    if (url.pathname === '/kept.js') {
      return route.fulfill({ contentType: 'text/javascript', body: script });
    }
    const headers =
      url.pathname === '/denied' ? { 'content-security-policy': 'sandbox allow-scripts' } : {};
    const body = '<!doctype html><script type="module" src="/kept.js"></script>';
    return route.fulfill({ contentType: 'text/html', headers, body });
  });
  return context;
}

export async function ready(page: Page): Promise<void> {
  await page.waitForFunction(() => 'kept' in window);
}

export function append(page: Page, ...drafts: readonly Draft[]): Promise<Result<readonly Entry[]>> {
  return page.evaluate((drafts) => window.kept.store.append(drafts), drafts);
}

export function entriesOf(page: Page): Promise<Result<readonly Entry[]>> {
  return page.evaluate(() => window.kept.store.read());
}

export function given<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.value;
}

export function refusalsIn(result: Result<unknown>): readonly Refusal[] {
  return result.ok ? [] : result.refusals;
}
