// Speaking to the person: lines on standard error, results on standard output, progress on a terminal alone.
import { writeSync } from 'node:fs';
import { systemReason } from './failure.ts';
import { unwritable } from './targets.ts';

const STANDARD_OUTPUT = 1;
const STANDARD_ERROR = 2;
const PAUSE_MS = 5;

/** A line for the person, out of the way of results. */
export function tell(line: string): void {
  clearProgress();
  writeAll(STANDARD_ERROR, Buffer.from(`${line}\n`));
}

/** A result, as it can be piped on. */
export function print(text: string | Uint8Array): void {
  clearProgress();
  writeAll(STANDARD_OUTPUT, typeof text === 'string' ? Buffer.from(text) : text);
}

const progress = { width: 0, shown: -1 };

/** Shows `words` for `done` of `all` on a terminal, once for each hundredth; nothing elsewhere. */
export function showProgress(words: (done: number, all: number) => string) {
  return (done: number, all: number): void => {
    const hundredth = Math.floor((100 * done) / Math.max(1, all));
    if (process.stderr.isTTY !== true || all < LONG || hundredth === progress.shown) return;
    const line = words(done, all);
    writeAll(STANDARD_ERROR, Buffer.from(`\r${line.padEnd(progress.width)}`));
    progress.width = line.length;
    progress.shown = hundredth;
  };
}

/** Fewer sheets than this are made before anyone wonders. */
const LONG = 5;

function clearProgress(): void {
  if (progress.width === 0) return;
  writeAll(STANDARD_ERROR, Buffer.from(`\r${' '.repeat(progress.width)}\r`));
  progress.width = 0;
  progress.shown = -1;
}

/**
 * Streams that nobody reads any more: a reader such as `head` has read enough, which is no failure
 * of ours, or standard error is gone, and there is nowhere to tell it.
 */
const closed = new Set<number>();

/** Written at once, in order, whole: also into a pipe whose reader is slow. */
function writeAll(stream: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length && !closed.has(stream); ) {
    try {
      done += writeSync(stream, bytes, done);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : '';
      if (code === 'EAGAIN') pause();
      else if (code === 'EPIPE' || stream === STANDARD_ERROR) closed.add(stream);
      else throw unwritable('standard output', systemReason(error));
    }
  }
}

/** Leaves a slow reader a moment. */
function pause(): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, PAUSE_MS);
}
