// A year that is ended at any point, by Ctrl-C or without warning, comes out as if it never was.
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it, vi } from 'vitest';
import { type Random, randomFrom } from '../../src/base/index.ts';
import { testSeed } from '../seed.ts';
import { emptyFolder, PROGRAM, samewise } from './program.ts';
import { filesUnder } from './year-files.ts';

/** Many runs, each of which may measure ladders first. */
vi.setConfig({ testTimeout: 900_000, hookTimeout: 900_000 });

const seed = testSeed('years that are ended');
const WORDS = [
  ...['year', '--list', 'list.txt', '--from', '2026-09-07', '--weeks', '3', '--sheets', '2'],
  ...['--files', 'pdf,json', '--out', 'year'],
];
const MOST_RUNS = 40;
const LOOK_MS = 2;

function newFolder(): string {
  const cwd = emptyFolder();
  writeFileSync(join(cwd, 'list.txt'), 'Wren, 2022-05\nMoss, step 2\nليلى\n');
  return cwd;
}

/** All that lies in the folder, half-written files too. */
function countIn(cwd: string): number {
  const year = join(cwd, 'year');
  return existsSync(year) ? readdirSync(year, { recursive: true }).length : 0;
}

/** Starts a run and sends it the signal once some more lies in the folder; the exit code, `null` after a kill. */
function runUntil(
  cwd: string,
  workers: number,
  more: number,
  signal: NodeJS.Signals,
): Promise<number | null> {
  const child: ChildProcess = spawn(
    process.execPath,
    [PROGRAM, ...WORDS, '--workers', String(workers)],
    { cwd, stdio: 'ignore' },
  );
  const enough = countIn(cwd) + more;
  let isSent = false;
  const look = setInterval(() => {
    if (isSent || countIn(cwd) < enough) return;
    isSent = true;
    child.kill(signal);
  }, LOOK_MS);
  return new Promise((resolve) => {
    child.on('close', (code) => {
      clearInterval(look);
      resolve(code);
    });
  });
}

/** Runs until one comes to its end; how many did not. */
async function endedRuns(cwd: string, random: Random, signal: NodeJS.Signals): Promise<number> {
  for (let ended = 0; ended < MOST_RUNS; ended++) {
    const code = await runUntil(cwd, random.int(1, 3), random.int(1, 7), signal);
    if (code === 0) return ended;
    expect([null, 130]).toContain(code);
  }
  throw new Error(`expected the year to be done after ${MOST_RUNS} runs`);
}

let whole: ReturnType<typeof filesUnder> = {};
beforeAll(async () => {
  const cwd = newFolder();
  const made = await samewise(WORDS, { cwd });
  expect(made.code, made.stderr).toBe(0);
  whole = filesUnder(join(cwd, 'year'));
});

it.each(['SIGKILL', 'SIGINT'] as const)(
  'is byte for byte the one that was never ended, after %s at random points',
  async (signal) => {
    const cwd = newFolder();
    const random = randomFrom(seed);
    expect(await endedRuns(cwd, random, signal)).toBeGreaterThan(0);
    expect(filesUnder(join(cwd, 'year'))).toEqual(whole);
  },
);

it('leaves nothing half-written behind after Ctrl-C', async () => {
  const cwd = newFolder();
  expect(await runUntil(cwd, 2, 4, 'SIGINT')).toBe(130);
  const names = readdirSync(join(cwd, 'year'), { recursive: true, encoding: 'utf8' });
  expect(names.filter((name) => name.endsWith('.part'))).toEqual([]);
});
