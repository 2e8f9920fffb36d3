// Takes the pictures of the app that the README shows: `node scripts/run.mjs scripts/app-pictures.ts`.
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { buildWeb, WEB_FOLDER } from './build-web.mjs';
import { serveWeb } from './serve.mjs';

const OUT = fileURLToPath(new URL('../docs/pictures/', import.meta.url));
const CHROMIUM = '/usr/bin/chromium';
const ARGUMENTS = ['--no-sandbox', '--disable-quic', '--disable-background-networking'];
/** A Friday, at which the invented group has its records of the three months before. */
const NOW = new Date('2026-11-27T09:00');
const WAIT_MS = 120_000;
/** In CSS pixels. */
const WIDTH = 1280;
const HEIGHTS = { make: 860, today: 960, growth: 900 };

export async function main(): Promise<void> {
  if (!buildWeb()) throw new Error('the app could not be built');
  const served = await serveWeb({ folder: WEB_FOLDER });
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ARGUMENTS });
  const context = await browser.newContext({ serviceWorkers: 'block' });
  context.setDefaultTimeout(WAIT_MS);
  try {
    await takeMake(context, served.address);
    await takeGroup(context, served.address);
  } finally {
    await browser.close();
    await served.close();
  }
}

async function takeMake(context: BrowserContext, address: string): Promise<void> {
  const page = await context.newPage();
  await page.setViewportSize({ width: WIDTH, height: HEIGHTS.make });
  await page.goto(`${address}#activity=what-changed&step=6&tasks=4&sheets=10&seed=3`);
  await page.locator('.sheet svg').first().waitFor();
  await page.getByText('Checked', { exact: false }).first().waitFor();
  await page.screenshot({ path: `${OUT}make.png` });
}

/** Today and Growth, of a child of the invented group each. */
async function takeGroup(context: BrowserContext, address: string): Promise<void> {
  const page = await context.newPage();
  await page.clock.setFixedTime(NOW);
  await page.goto(`${address}#record`);
  await page.getByRole('button', { name: 'Try with a demo group' }).click();
  await page.getByText('These children are invented').waitFor();
  await takeOf(page, 'today', 'Today', 'Moss', '.day-sheet svg');
  await takeOf(page, 'growth', 'Growth', 'Alder', '.skill-course svg');
}

async function takeOf(
  page: Page,
  name: 'today' | 'growth',
  place: string,
  child: string,
  sign: string,
): Promise<void> {
  await page.setViewportSize({ width: WIDTH, height: HEIGHTS[name] });
  await page.getByRole('link', { name: place, exact: true }).click();
  await page.getByText(child, { exact: true }).first().click();
  await page
    .getByText(`${child} is getting on`)
    .or(page.getByText(`Today for ${child}`))
    .waitFor();
  await page.locator(sign).first().waitFor();
  await page.screenshot({ path: `${OUT}${name}.png` });
}
