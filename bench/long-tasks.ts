// How long the screen is kept from answering while a pack of very many pages is made, pressed to PDF and saved.
import { chromium } from 'playwright-core';
import { WEB_FOLDER } from '../scripts/build-web.mjs';
import { serveWeb } from '../scripts/serve.mjs';

const SHEETS = 250;
const VIEWPORT = { width: 1440, height: 900 };
const FLAGS = ['--no-sandbox', '--disable-quic', '--disable-background-networking'];
/** A task of the browser is long from this on, in ms (W3C Long Tasks). */
const LONG_MS = 50;
/** How long a page may take to be pressed on a busy machine, in ms. */
const PATIENCE_MS = 600_000;

interface Tasks {
  readonly longest: number;
  readonly count: number;
  /** The longest time between two frames. */
  readonly frame: number;
}

/** Milliseconds of the page's own clock; at rest, and while the PDF is made, in the same run. Needs the built app. */
export async function measureLongTasks(folder = WEB_FOLDER): Promise<void> {
  const served = await serveWeb({ folder });
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  const page = await browser.newPage({ viewport: VIEWPORT });
  await page.goto(`${served.address}#seed=7&step=5&sheets=${SHEETS}`);
  await page.locator('.sheet svg').waitFor();
  await page.waitForLoadState('networkidle');
  await page.evaluate(watchTasks, LONG_MS);
  await page.waitForTimeout(2000);
  const rest = await page.evaluate(takeTasks);
  const saved = page.waitForEvent('download', { timeout: PATIENCE_MS });
  const start = Date.now();
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  const path = await (await saved).path();
  const took = (Date.now() - start) / 1000;
  const pressed = await page.evaluate(takeTasks);
  console.log(
    `\n${SHEETS} sheets with their answers to ${path === '' ? 'nothing' : 'a saved PDF'}`,
  );
  console.log(`  ${took.toFixed(1)} s from the press to the saved file`);
  tell('at rest', rest);
  tell('meanwhile', pressed);
  await browser.close();
  await served.close();
}

function tell(when: string, { longest, count, frame }: Tasks): void {
  const long =
    count === 0 ? `no task of ${LONG_MS} ms` : `longest of ${count} long tasks ${longest} ms`;
  console.log(`  ${when}: ${long}, longest time between two frames ${frame.toFixed(0)} ms`);
}

interface Watched {
  tasks: number[];
  frame: number;
}

/** From now on. */
function watchTasks(longMs: number): void {
  const watched: Watched = { tasks: [], frame: 0 };
  Object.assign(window, { watched });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries())
      if (duration >= longMs) watched.tasks.push(duration);
  }).observe({ type: 'longtask' });
  let last = performance.now();
  const tick = () => {
    const now = performance.now();
    watched.frame = Math.max(watched.frame, now - last);
    last = now;
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
}

/** What was seen since it was last taken. */
function takeTasks(): Tasks {
  const { watched } = window as unknown as { readonly watched: Watched };
  const { tasks, frame } = watched;
  Object.assign(watched, { tasks: [], frame: 0 });
  return { longest: Math.max(0, ...tasks), count: tasks.length, frame };
}
