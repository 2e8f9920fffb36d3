// How long a change of a dial takes from the press to the frame that shows the new page.
import { chromium, type Page } from 'playwright-core';
import { WEB_FOLDER } from '../scripts/build-web.mjs';
import { serveWeb } from '../scripts/serve.mjs';

const CHANGES = 200;
const FLAGS = ['--no-sandbox', '--disable-quic', '--disable-background-networking'];

/** The dials that are turned to and fro, by their recipes and the names of their two buttons. */
const DIALS = [
  { name: 'tasks, in every box', recipe: 'seed=7&step=5', up: 'increment', down: 'decrement' },
  {
    name: 'tasks, continue the row',
    recipe: 'activity=continue-row&seed=7&step=5',
    up: 'increment',
    down: 'decrement',
  },
] as const;

/** Milliseconds of each change, of the page's own clock, and of one frame of this browser. Needs the built app. */
export async function measureRedraw(): Promise<void> {
  const served = await serveWeb({ folder: WEB_FOLDER });
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS });
  console.log(`\nfrom a press on a dial to the frame with the new page, ${CHANGES} changes`);
  for (const dial of DIALS) {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(`${served.address}#${dial.recipe}`);
    await page.locator('.sheet svg').waitFor();
    const frame = median(await page.evaluate(framesOf, 60));
    const times = await changesOf(page);
    const [half, most] = [times[CHANGES / 2] ?? 0, times[Math.ceil(CHANGES * 0.95) - 1] ?? 0];
    const inFrames = (ms: number) => `${ms.toFixed(1)} ms, ${(ms / frame).toFixed(1)} frames`;
    console.log(`  ${dial.name}: p50 ${inFrames(half)}; p95 ${inFrames(most)}`);
    await page.close();
  }
  await browser.close();
  await served.close();
}

function median(times: readonly number[]): number {
  return [...times].sort((one, other) => one - other)[Math.floor(times.length / 2)] ?? Number.NaN;
}

/** Times between frames of a page at rest. */
function framesOf(count: number): Promise<number[]> {
  return new Promise((resolve) => {
    const times: number[] = [];
    let last = performance.now();
    const tick = () => {
      const now = performance.now();
      times.push(now - last);
      last = now;
      if (times.length < count) requestAnimationFrame(tick);
      else resolve(times);
    };
    requestAnimationFrame(tick);
  });
}

/** In order of time. Each change ends in a frame with another page, before the next is begun. */
async function changesOf(page: Page): Promise<number[]> {
  const times = await page.evaluate(async (changes) => {
    const dial = document.querySelectorAll('.sentence .number')[1];
    const [down, up] = Array.from(dial?.querySelectorAll('button') ?? []);
    const paper = document.querySelector('.paper');
    if (up === undefined || down === undefined || paper === null) throw new Error('no dial');
    const pageNow = () => document.querySelector('.sheet')?.innerHTML;
    const press = (button: HTMLElement) =>
      new Promise<number>((resolve) => {
        const before = pageNow();
        const start = performance.now();
        const observer = new MutationObserver(() => {
          if (pageNow() === before) return;
          observer.disconnect();
          requestAnimationFrame(() => resolve(performance.now() - start));
        });
        observer.observe(paper, { childList: true, subtree: true });
        button.click();
      });
    const all: number[] = [];
    for (let change = 0; change < changes; change++) all.push(await press(change % 2 ? up : down));
    return all;
  }, CHANGES);
  return times.sort((one, other) => one - other);
}
