// How long the screen is kept from answering while a pack of very many pages is made, pressed to PDF and saved, or printed.
import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
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

/** What is done with the pack, by the name of its button, and what shows that it is done. */
const WAYS: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'Get the PDF': (page) => page.waitForEvent('download', { timeout: PATIENCE_MS }),
  Print: (page) =>
    page.waitForFunction(() => document.title === 'printed', undefined, { timeout: PATIENCE_MS }),
};

/** Milliseconds of the page's own clock; at rest, and while the pack is made, in the same run. Needs the built app. */
export async function measureLongTasks(folder = WEB_FOLDER): Promise<void> {
  const served = await serveWeb({ folder });
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  for (const [button, isDone] of Object.entries(WAYS)) {
    const page = await browser.newPage({ viewport: VIEWPORT });
    await page.goto(`${served.address}#seed=7&step=5&sheets=${SHEETS}`);
    await page.locator('.sheet svg').waitFor();
    await page.waitForLoadState('networkidle');
    await page.evaluate(watchTasks, LONG_MS);
    await page.waitForTimeout(2000);
    const rest = await page.evaluate(takeTasks);
    const processor = await followProcessor(browser);
    const done = isDone(page);
    const start = Date.now();
    await page.getByRole('button', { name: button, exact: true }).click();
    await done;
    const took = (Date.now() - start) / 1000;
    const meanwhile = await page.evaluate(takeTasks);
    const { longest, all } = await processor();
    console.log(`\n${SHEETS} sheets with their answers, “${button}”: ${took.toFixed(1)} s`);
    tell('at rest', rest);
    tell('meanwhile', meanwhile);
    console.log(
      `  on the processor: longest task ${longest.toFixed(1)} ms, all of them ${all.toFixed(0)} ms`,
    );
    await page.close();
  }
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

/** From now on; no dialogue opens. */
function watchTasks(longMs: number): void {
  window.print = () => {
    document.title = 'printed';
  };
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

interface Traced {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Time on the processor, in microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

const TASK = /^(ThreadControllerImpl::)?RunTask$/;

/**
 * Follows the tasks of the screen from now on, by the time that they had the processor: on a busy machine a task waits
 * for it far longer than it works. The way returned ends that, and tells of the thread that worked most.
 */
async function followProcessor(
  browser: Browser,
): Promise<() => Promise<{ readonly longest: number; readonly all: number }>> {
  const session = await browser.newBrowserCDPSession();
  const traced: Traced[] = [];
  session.on('Tracing.dataCollected', ({ value }) =>
    traced.push(...(value as unknown as Traced[])),
  );
  const traceConfig = { includedCategories: ['toplevel', 'devtools.timeline'] };
  await session.send('Tracing.start', { traceConfig, transferMode: 'ReportEvents' });
  return async () => {
    await ended(session);
    const screens = traced.filter(({ args }) => args?.name === 'CrRendererMain');
    const sums = screens.map((screen) => {
      const times = traced
        .filter(({ name, pid, tid }) => TASK.test(name) && isOf(screen, pid, tid))
        .map(({ tdur = 0 }) => tdur / 1000);
      return { longest: Math.max(0, ...times), all: times.reduce((one, other) => one + other, 0) };
    });
    return sums.sort((one, other) => other.all - one.all)[0] ?? { longest: 0, all: 0 };
  };
}

function isOf(screen: Traced, pid: number, tid: number): boolean {
  return screen.pid === pid && screen.tid === tid;
}

async function ended(session: CDPSession): Promise<void> {
  const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.end');
  await complete;
  await session.detach();
}
