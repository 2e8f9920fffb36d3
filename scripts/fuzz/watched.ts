// Runs one kind in a process of its own, and ends it where it hangs or takes all memory.
import { fork } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import type { Report } from './run-kind.ts';

const ROOT = process.cwd();
/** Two below the root, as the built command line is: it looks for its files from there. */
const BUILT = join('dist', `fuzz-${process.pid}`);
const FILE = 'one-kind.js';

/** A batch that is not done after so long hangs. */
const LONGEST_SILENCE_MS = 600_000;
const HEAP_MB = 1024;
/** Inputs between two words on how far it is. */
const SHOWN = 5000;

/** The last report, and how the process ended where it did not end well. */
export type Ended = Report & { readonly end?: string };

/** Builds what a process runs, once for all kinds; it goes again when this process ends. */
export async function buildKinds(): Promise<void> {
  process.on('exit', () => rmSync(join(ROOT, BUILT), { recursive: true, force: true }));
  await build({
    root: ROOT,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      ssr: 'scripts/fuzz/one-kind.ts',
      outDir: BUILT,
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      rollupOptions: { output: { entryFileNames: FILE, chunkFileNames: '[name].js' } },
    },
  });
}

export interface WatchOptions {
  /** Whether an input that takes too long is a failure. */
  readonly isTimed?: boolean;
  /** Called every so often. */
  readonly onProgress?: (report: Report) => void;
}

export function watched(
  name: string,
  inputs: number,
  seed: number,
  { isTimed = true, onProgress = () => {} }: WatchOptions = {},
): Promise<Ended> {
  const child = fork(
    join(ROOT, BUILT, FILE),
    [name, String(inputs), String(seed), String(isTimed)],
    {
      execArgv: ['--expose-gc', `--max-old-space-size=${HEAP_MB}`],
      // What the command line says goes nowhere.
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
    },
  );
  const none = { kind: name, seed, inputs: 0, longestMs: 0, longest: '', heapBytes: 0 };
  let last: Ended = { ...none, failures: [] };
  let said = '';
  child.stderr?.on('data', (piece: Buffer) => {
    said = (said + piece.toString('utf8')).slice(-2000);
  });
  const silence = setTimeout(() => child.kill('SIGKILL'), LONGEST_SILENCE_MS);
  child.on('message', (report) => {
    const before = last.inputs;
    last = report as Report;
    silence.refresh();
    if (Math.floor(before / SHOWN) !== Math.floor(last.inputs / SHOWN)) onProgress(last);
  });
  return new Promise((resolve) => {
    child.on('close', (code, signal) => {
      clearTimeout(silence);
      const how = signal ? `was ended (${signal}): it hung, or had no memory left` : `left ${code}`;
      const end = `after ${last.inputs} inputs it ${how}\n${said}`;
      resolve(code === 0 && last.inputs >= inputs ? last : { ...last, end });
    });
  });
}
