// Measures a year's making with one worker and with two: `node scripts/run.mjs bench/year.ts [sheets …]` after `npm run build:cli`.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('../bin/samewise.js', import.meta.url));
const [WEEKS, SHEETS_A_WEEK] = [40, 5];
const USUAL_SHEETS = 2000;
const LOOK_MS = 100;
/** What Linux counts processor time in. */
const TICKS_A_SECOND = 100;

interface Run {
  readonly seconds: number;
  readonly processorSeconds: number;
  readonly peakMb: number;
}

/** For each number of sheets a run with one worker and one with two. */
export async function main(words: readonly string[]): Promise<void> {
  const amounts = words.length > 0 ? words.map(Number) : [USUAL_SHEETS];
  console.log(`bench/year.ts · Node ${process.version} · ${cpus().length} cores`);
  for (const sheets of amounts) {
    const one = await measured(sheets, 1);
    const two = await measured(sheets, 2);
    console.log(`  two workers are ${(one.seconds / two.seconds).toFixed(2)} × as fast as one`);
  }
}

async function measured(sheets: number, workers: number): Promise<Run> {
  const cwd = mkdtempSync(join(tmpdir(), 'samewise-year-'));
  const children = Math.ceil(sheets / (WEEKS * SHEETS_A_WEEK));
  writeFileSync(join(cwd, 'list.txt'), listOf(children));
  const run = await yearIn(cwd, workers);
  rmSync(cwd, { recursive: true });
  const made = children * WEEKS * SHEETS_A_WEEK;
  const rate = (made / run.seconds).toFixed(1);
  const processor = ((1000 * run.processorSeconds) / made).toFixed(1);
  const load = loadavg().map((each) => each.toFixed(0));
  console.log(
    `  ${made} sheets, workers ${workers}: ${run.seconds.toFixed(0)} s, ${rate} sheets a second, ` +
      `${processor} ms of processor time a sheet, at most ${run.peakMb.toFixed(0)} MB; load ${load.join(' ')}`,
  );
  return run;
}

/** Children from three to five, every month as often. */
function listOf(children: number): string {
  const months = ['2021', '2022', '2023'].flatMap((year) =>
    Array.from({ length: 12 }, (_, month) => `${year}-${String(month + 1).padStart(2, '0')}`),
  );
  const lines = Array.from({ length: children }, (_, place) => {
    return `Child ${place + 1}, ${months[(7 * place) % months.length]}`;
  });
  return lines.join('\n');
}

function yearIn(cwd: string, workers: number): Promise<Run> {
  const words = ['year', '--list', 'list.txt', '--from', '2026-09-07', '--out', 'year'];
  const asked = ['--weeks', `${WEEKS}`, '--sheets', `${SHEETS_A_WEEK}`, '--workers', `${workers}`];
  const start = performance.now();
  const child = spawn(process.execPath, [PROGRAM, ...words, ...asked], { cwd, stdio: 'ignore' });
  let [processorSeconds, peakMb] = [0, 0];
  const look = setInterval(() => {
    try {
      const [processor, peak] = usedBy(child.pid ?? 0);
      processorSeconds = processor;
      // Of a program that has ended and is not waited for yet Linux tells no memory.
      peakMb = Math.max(peakMb, peak);
    } catch {
      // It has just ended: what was seen last stands.
    }
  }, LOOK_MS);
  return new Promise((resolve, reject) => {
    child.on('close', (code) => {
      clearInterval(look);
      const seconds = (performance.now() - start) / 1000;
      if (code === 0) resolve({ seconds, processorSeconds, peakMb });
      else reject(new Error(`samewise year ended with ${code}`));
    });
  });
}

/** Processor time in seconds and peak of memory in MB, as Linux tells them (proc(5)). */
function usedBy(pid: number): [processorSeconds: number, peakMb: number] {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const peakKb = Number(/VmHWM:\s+(\d+)/.exec(status)?.[1] ?? 0);
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
  const [user = 0, system = 0] = stat
    .slice(stat.lastIndexOf(')') + 2)
    .split(' ')
    .slice(11, 13)
    .map(Number);
  return [(user + system) / TICKS_A_SECOND, peakKb / 1024];
}
