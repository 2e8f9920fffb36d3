// Measures making, proving and printing as ratios within one run: `npm run bench`.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { ACTIVITY_IDS, activityOf } from '../src/activities/index.ts';
import { randomFrom } from '../src/base/index.ts';
import type { Page } from '../src/page/index.ts';
import { svgOf, writePdf } from '../src/press/index.ts';
import { makePack, readRecipe, sheetPage } from '../src/sheets/index.ts';
import { measureAgainstASolver } from './against-a-solver.ts';
import { measureLongTasks } from './long-tasks.ts';
import { measureRedraw } from './redraw.ts';
import { measureSizes } from './sizes.ts';

const ROUNDS = 5;
const TASKS = 400;
const SHEETS = 120;
const COLOUR = { print: 'colour' } as const;

export async function main(): Promise<void> {
  console.log(
    `npm run bench · Node ${process.version} · ${cpus().length} cores · median of ${ROUNDS} rounds`,
  );
  measureTasks();
  measureAgainstASolver();
  await measurePages();
  measureSizes();
  await measureRedraw();
  await measureLongTasks();
}

/** Seconds that `work` takes: the median of the rounds after one that does not count. */
async function seconds(work: () => unknown, rounds = ROUNDS): Promise<number> {
  await work();
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const start = process.hrtime.bigint();
    await work();
    times.push(Number(process.hrtime.bigint() - start) / 1e9);
  }
  return times.sort((one, other) => one - other)[Math.floor(times.length / 2)] ?? Number.NaN;
}

/** For each activity the median task over its whole ladder, against hashing one mebibyte in the same run. */
function measureTasks(): void {
  const block = Buffer.alloc(2 ** 20, 7);
  const hash = medianMs(() => createHash('sha256').update(block).digest(), 50);
  console.log(`\nmaking and proving one task (reference: SHA-256 of 1 MiB, ${hash.toFixed(2)} ms)`);
  for (const id of ACTIVITY_IDS) {
    const activity = activityOf(id);
    const times: number[] = [];
    for (let seed = 0; seed < TASKS; seed++) {
      const step = 1 + (seed % activity.ladder.length);
      const values = activity.read(step, {}, COLOUR);
      if (!values.ok) throw new Error(`${id}, step ${step} is refused`);
      times.push(
        medianMs(() => {
          const task = activity.generate(values.value, randomFrom(seed), COLOUR);
          if (!activity.prove(task).proven) throw new Error(`${id}, step ${step}, seed ${seed}`);
        }, 1),
      );
    }
    const median = times.sort((one, other) => one - other)[TASKS / 2] ?? Number.NaN;
    console.log(
      `  ${id.padEnd(14)} ${median.toFixed(2)} ms a task, ${(median / hash).toFixed(2)} × the reference`,
    );
  }
}

function medianMs(work: () => unknown, rounds: number): number {
  const times = Array.from({ length: rounds }, () => {
    const start = process.hrtime.bigint();
    work();
    return Number(process.hrtime.bigint() - start) / 1e6;
  });
  return times.sort((one, other) => one - other)[Math.floor(rounds / 2)] ?? Number.NaN;
}

async function measurePages(): Promise<void> {
  const pages = pagesToPrint();
  const svgs = pages.map((page) => svgOf(page));
  const pdf = await seconds(() => pdfBytes(pages));
  const bytes = (await pdfBytes(pages)).length;
  const limit = await seconds(() => svgs.map((svg) => deflateSync(svg)));
  const browser = await seconds(() => printWithChromium(svgs), 1);
  console.log(
    `\n${SHEETS} sheets to PDF: ${(SHEETS / pdf).toFixed(0)} pages a second, ${Math.round(bytes / SHEETS)} bytes a page`,
  );
  console.log(`  ${(pdf / limit).toFixed(2)} × deflating the same pages as SVG text`);
  console.log(
    `  headless Chromium printing the same pages takes ${(browser / pdf).toFixed(1)} × as long`,
  );
}

function pagesToPrint(): Page[] {
  const parts = ACTIVITY_IDS.map((activity) => ({
    activity,
    step: 5,
    sheets: Math.ceil(SHEETS / ACTIVITY_IDS.length),
  }));
  const recipe = readRecipe({ format: 'samewise.recipe', version: 1, parts });
  if (!recipe.ok) throw new Error(JSON.stringify(recipe.refusals));
  const pack = makePack({ ...recipe.value, seed: 7 });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value.sheets.slice(0, SHEETS).map((sheet) => sheetPage(sheet));
}

async function pdfBytes(pages: readonly Page[]): Promise<Buffer> {
  const font = (name: string) =>
    readFileSync(new URL(`../assets/fonts/Andika-${name}.ttf`, import.meta.url));
  const chunks: Uint8Array[] = [];
  const fonts = { regular: font('Regular'), bold: font('Bold') };
  await writePdf({ title: 'Bench', language: 'en', pages }, fonts, (chunk) => {
    chunks.push(chunk.slice());
  });
  return Buffer.concat(chunks);
}

function printWithChromium(svgs: readonly string[]): void {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-bench-'));
  const style = '<style>@page{size:A4;margin:0}svg{display:block;page-break-after:always}</style>';
  writeFileSync(
    join(folder, 'pages.html'),
    style + svgs.map((svg) => svg.replace(/^<\?xml.*?\?>/, '')).join(''),
  );
  const flags = [
    '--headless',
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--disable-background-networking',
  ];
  const print = `--print-to-pdf=${join(folder, 'out.pdf')}`;
  execFileSync(
    '/usr/bin/chromium',
    [...flags, `--user-data-dir=${folder}/profile`, print, `file://${folder}/pages.html`],
    {
      stdio: 'ignore',
    },
  );
  rmSync(folder, { recursive: true });
}
