// The built app, served as `npm start` serves it, in a real browser; one for each test file.
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { buildWeb, WEB_FOLDER } from '../../scripts/build-web.mjs';
import { type Served, serveWeb } from '../../scripts/serve.mjs';
import { activityOf } from '../../src/activities/index.ts';

const CHROMIUM = '/usr/bin/chromium';
const ARGUMENTS = ['--no-sandbox', '--disable-quic', '--disable-background-networking'];

/** Sizes of screens in CSS pixels: a small phone, and a usual desktop. */
export const PHONE = { width: 360, height: 740 };
export const DESKTOP = { width: 1440, height: 900 };

/** Storing all files for a visit without a network is in the way of tests that are about anything else. */
const USUAL = { viewport: DESKTOP, serviceWorkers: 'block' } as const;

export interface App {
  readonly address: () => string;
  /** A page of a browser of its own, on which nothing is opened yet. */
  readonly blank: (options?: BrowserContextOptions) => Promise<Page>;
  /** Opens the app with a recipe in its address, and waits until its page lies on the table. */
  readonly open: (recipe?: string, options?: OpenOptions) => Promise<Page>;
}

export interface OpenOptions extends BrowserContextOptions {
  /** What shows that the app is ready. */
  readonly waitFor?: keyof typeof SIGNS;
}

/** A page, the reason why there is none, the records, or the choice of a child. */
const SIGNS = {
  page: '.sheet svg',
  objection: '.objection:visible',
  record: 'button:text("Add a child")',
  child: '.child-choice, .no-child',
} as const;

export interface AppOptions {
  /** Builds what is served, and gives its folder. */
  readonly build?: () => string | Promise<string>;
  /** What the server listens on, where it is not this machine alone. */
  readonly host?: string;
  /** Further switches of the browser. */
  readonly flags?: readonly string[];
}

/** Builds, serves and opens what the tests of the calling file or block need, and closes it after them. */
export function startApp({ build = builtApp, host, flags = [] }: AppOptions = {}): App {
  let browser: Browser;
  let served: Served;
  beforeAll(async () => {
    served = await serveWeb({ folder: await build(), ...(host === undefined ? {} : { host }) });
    browser = await chromium.launch({ executablePath: CHROMIUM, args: [...ARGUMENTS, ...flags] });
  });
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
  });
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });
  const blank = async (options: BrowserContextOptions = {}) =>
    (await browser.newContext({ ...USUAL, ...options })).newPage();
  return {
    address: () => served.address,
    blank,
    open: async (recipe = '', { waitFor = 'page', ...options } = {}) => {
      const page = await blank(options);
      await page.goto(`${served.address}${recipe === '' ? '' : `#${recipe}`}`);
      await page.locator(SIGNS[waitFor]).first().waitFor();
      return page;
    },
  };
}

function builtApp(): string {
  if (!buildWeb()) throw new Error('the app could not be built');
  return WEB_FOLDER;
}

/** The drawing on the table, once it is there. */
export async function drawn(page: Page): Promise<string> {
  const sheet = page.locator('.sheet');
  await sheet.locator('svg').waitFor();
  return sheet.innerHTML();
}

/** The drawing on the table once it is another one than before. */
export async function drawnAnew(page: Page, before: string): Promise<string> {
  await page.waitForFunction((old) => document.querySelector('.sheet')?.innerHTML !== old, before);
  return drawn(page);
}

/** A bold word of the sentence, by the label that a reader hears. */
export function choiceOf(page: Page, label: string) {
  return page.getByRole('button', { name: new RegExp(`\\b${label}$`) });
}

/** The label of a parameter of in-every-box, as its own words have it. */
export function labelOf(parameter: string): string {
  const label = activityOf('in-every-box').words.en.parameters[parameter]?.label;
  if (label === undefined) throw new Error(`in-every-box › ${parameter}: expected words`);
  return label;
}

/** The code of the sheet on the table. */
export async function codeOf(page: Page): Promise<string> {
  // The code stands beside the page, and what stands there follows the page by a frame or more.
  await page.waitForFunction((form) => {
    const title = document.querySelector('.sheet svg title')?.textContent ?? '';
    const onPage = new RegExp(form).exec(title)?.[0] ?? '';
    return document.querySelector('output.code')?.textContent?.startsWith(onPage);
  }, CODE_IN_TITLE);
  return (await page.locator('output.code').textContent()) ?? '';
}

/** A sheet's title ends with its code, or the beginning of a long one. */
const CODE_IN_TITLE = '[0-9A-Z]{4}(-[0-9A-Z]{1,4})+';
