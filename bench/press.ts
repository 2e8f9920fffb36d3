// Measures the press: its speed against what is physically needed and against a browser's printing, and its memory.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build, type Rolldown } from 'vite';

const PAGES = 500;
const MANY_PAGES = 5_000;
const CHROMIUM = '/usr/bin/chromium';
const QUIET = ['--no-sandbox', '--disable-quic', '--disable-background-networking'];
const ADDRESS = 'http://press.bench/';

interface Times {
  readonly wall: readonly number[];
  readonly processor: readonly number[];
  /** Packing the streams as they are written, and packing them with every figure written out where it lies. */
  readonly limit: readonly number[];
  readonly plainLimit: readonly number[];
  readonly streams: number;
  readonly stamps: number;
  readonly bytes: number;
}

export async function measurePress(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-bench-'));
  const program = await programOf();
  const run = <T>(...words: readonly string[]) =>
    JSON.parse(execFileSync('node', [program, ...words, folder], { encoding: 'utf8' })) as T;
  const times = run<Times>('time', String(PAGES));
  if (times.streams !== PAGES) throw new Error(`${times.streams} content streams were found`);
  const printed = wallMsOf(() => printWithChromium(folder));
  const inBrowser = await timesInBrowser();
  tell(times, printed, inBrowser);
  for (const what of ['pressing', 'making'] as const) {
    const [few, many] = [PAGES, MANY_PAGES].map((pages) => run<number>(what, String(pages)) / 1024);
    tellPeaks(what, few ?? Number.NaN, many ?? Number.NaN);
  }
  rmSync(folder, { recursive: true });
}

function tell(
  { wall, processor, limit, plainLimit, stamps, bytes }: Times,
  printedMs: number,
  inBrowser: readonly number[],
): void {
  const pdf = middle(processor);
  console.log(
    `\n${PAGES} sheets of every activity to tagged PDF, load average ${loadavg()[0]?.toFixed(1)}`,
  );
  console.log(
    `  ${pdf.toFixed(0)} ms of processor, ${Math.round(bytes / PAGES)} bytes a page, ${stamps} figures kept once`,
  );
  console.log(
    `  ${(pdf / middle(limit)).toFixed(2)} × packing the streams as they are written with zlib`,
  );
  console.log(
    `  ${(pdf / middle(plainLimit)).toFixed(2)} × packing plain streams, every figure written out where it lies`,
  );
  console.log(
    `  headless Chromium printing the same pages takes ${(printedMs / middle(wall)).toFixed(1)} × as long`,
  );
  console.log(
    `  quickest round: Node ${wall[0]?.toFixed(0)} ms, Chromium's worker ${inBrowser[0]?.toFixed(0)} ms`,
  );
}

function tellPeaks(what: 'pressing' | 'making', few: number, many: number): void {
  const work = what === 'making' ? 'making each sheet and pressing it' : 'pressing alone';
  console.log(
    `  ${work}, peak memory: ${few.toFixed(0)} MiB at ${PAGES} pages, ${many.toFixed(0)} MiB at ${MANY_PAGES} (${(many / few).toFixed(2)} ×)`,
  );
}

function middle(times: readonly number[]): number {
  return times[Math.floor(times.length / 2)] ?? Number.NaN;
}

/** The measures as a program for plain Node, so that no bundler stays in the memory that is measured. */
async function programOf(): Promise<string> {
  const outDir = 'out/bench';
  await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    ssr: { noExternal: true, external: ['pdfkit'] },
    build: {
      ssr: 'bench/press-in-node.ts',
      outDir,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: 'press.mjs' } },
    },
  });
  return join(outDir, 'press.mjs');
}

function wallMsOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function printWithChromium(folder: string): void {
  const print = `--print-to-pdf=${join(folder, 'out.pdf')}`;
  const own = ['--headless', '--disable-gpu', `--user-data-dir=${folder}/profile`, print];
  execFileSync(CHROMIUM, [...QUIET, ...own, `file://${folder}/pages.html`], { stdio: 'ignore' });
}

async function timesInBrowser(): Promise<readonly number[]> {
  const built = (await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      write: false,
      lib: { entry: 'bench/press-in-browser.ts', formats: ['es'], fileName: 'press' },
    },
  })) as Rolldown.RolldownOutput[];
  const [chunk] = built[0]?.output ?? [];
  if (!chunk) throw new Error('nothing was built');
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
  try {
    const page = await browser.newPage();
    await page.route(`${ADDRESS}**`, (route) =>
      route.request().url() === ADDRESS
        ? route.fulfill({ contentType: 'text/html', body: '<!doctype html>' })
        : route.fulfill({ contentType: 'text/javascript', body: chunk.code }),
    );
    await page.goto(ADDRESS);
    const font = (name: string) => readFileSync(`assets/fonts/Andika-${name}.ttf`, 'base64');
    const order = { pages: PAGES, regular: font('Regular'), bold: font('Bold') };
    return await page.evaluate<readonly number[]>(`new Promise((resolve, reject) => {
      const worker = new Worker('${ADDRESS}press.js', { type: 'module' });
      worker.onmessage = ({ data }) => resolve(data);
      worker.onerror = ({ message }) => reject(new Error(message));
      worker.postMessage(${JSON.stringify(order)});
    })`);
  } finally {
    await browser.close();
  }
}

export async function main(): Promise<void> {
  await measurePress();
}
