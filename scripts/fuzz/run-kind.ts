// Gives very many inputs of one kind to the code that reads them, and gathers what must not be.
import fc from 'fast-check';
import type { Kind } from './kind.ts';
import { nothingPolluted, nothingReplaced } from './must-hold.ts';

/** Inputs between two looks at the heap. */
const BATCH = 500;
/** What one input may take of the processor: this, and more for a long one. */
const MOST_MS = 1000;
const MS_A_MILLION_CHARACTERS = 1000;
/** Live after a batch: what is kept of measured figures and the like is bounded. */
const MOST_HEAP_BYTES = 400_000_000;
const LONGEST_SHOWN = 600;

export interface Failure {
  readonly message: string;
  /** The smallest input found that still fails, cut short. */
  readonly input: string;
  /** With which the batch is repeated. */
  readonly seed: number;
  readonly times: number;
}

export interface Report {
  readonly kind: string;
  readonly seed: number;
  readonly inputs: number;
  readonly longestMs: number;
  readonly longest: string;
  readonly heapBytes: number;
  readonly failures: readonly Failure[];
}

export interface RunOptions {
  readonly inputs: number;
  readonly seed: number;
  /** Whether an input that takes too long is a failure; a busy machine makes no failure of a test. */
  readonly isTimed: boolean;
  readonly onBatch?: (report: Report) => void;
}

interface Tally {
  count: number;
  longestMs: number;
  longest: string;
  heapBytes: number;
  readonly failures: Map<string, Failure>;
}

/** Goes on after a failure, with the next batch, until so many inputs were given. */
export async function runKind<T>(kind: Kind<T>, options: RunOptions): Promise<Report> {
  const { inputs, seed, onBatch } = options;
  const tally: Tally = { count: 0, longestMs: 0, longest: '', heapBytes: 0, failures: new Map() };
  const report = (): Report => {
    const { count, longestMs, longest, heapBytes, failures } = tally;
    const found = [...failures.values()];
    return { kind: kind.name, seed, inputs: count, longestMs, longest, heapBytes, failures: found };
  };
  kind.ready?.();
  for (let batch = 0; tally.count < inputs; batch++) {
    const size = Math.min(BATCH, inputs - tally.count);
    await runBatch(kind, tally, { ...options, seed: seed + batch, inputs: size });
    nothingReplaced();
    lookAtHeap(tally, seed + batch);
    onBatch?.(report());
  }
  return report();
}

async function runBatch<T>(kind: Kind<T>, tally: Tally, options: RunOptions): Promise<void> {
  const { inputs, seed, isTimed } = options;
  let hasFailed = false;
  const property = fc.asyncProperty(kind.inputs, async (input) => {
    if (!hasFailed) tally.count += 1;
    try {
      await meetTimed(kind, input, tally, isTimed);
    } catch (error) {
      hasFailed = true;
      throw error;
    }
  });
  const found = await fc.check(property, { numRuns: inputs, seed });
  if (!found.failed) return;
  const error = found.errorInstance;
  const message = error instanceof Error ? failureText(error) : String(error);
  const input = found.counterexample ? kind.show(found.counterexample[0]) : '';
  addFailure(tally, { message, input: input.slice(0, LONGEST_SHOWN), seed, times: 1 });
}

async function meetTimed<T>(
  kind: Kind<T>,
  input: T,
  tally: Tally,
  isTimed: boolean,
): Promise<void> {
  const start = process.cpuUsage();
  try {
    await kind.meet(input);
  } finally {
    nothingPolluted();
  }
  const { user, system } = process.cpuUsage(start);
  const ms = (user + system) / 1000;
  if (ms > tally.longestMs) {
    tally.longestMs = ms;
    tally.longest = kind.show(input).slice(0, LONGEST_SHOWN);
  }
  if (!isTimed || ms <= MOST_MS) return;
  const most = MOST_MS + (MS_A_MILLION_CHARACTERS * kind.show(input).length) / 1e6;
  if (ms > most) throw new Error('took too long');
}

function lookAtHeap(tally: Tally, seed: number): void {
  if (globalThis.gc === undefined) return;
  globalThis.gc();
  const { heapUsed } = process.memoryUsage();
  tally.heapBytes = Math.max(tally.heapBytes, heapUsed);
  if (heapUsed <= MOST_HEAP_BYTES) return;
  addFailure(tally, { message: 'the heap grows', input: `${heapUsed} bytes`, seed, times: 1 });
}

/** One fault shows in many inputs; the shortest of them tells it. */
function addFailure({ failures }: Tally, failure: Failure): void {
  const key = failure.message.replace(/\d+/g, '#').slice(0, 300);
  const before = failures.get(key);
  const shortest = before && before.input.length <= failure.input.length ? before : failure;
  failures.set(key, { ...shortest, times: (before?.times ?? 0) + 1 });
}

const MOST_LINES = 6;

function failureText({ name, message, stack = '' }: Error): string {
  const at = stack
    .split('\n')
    .filter((line) => line.trim().startsWith('at '))
    .slice(0, MOST_LINES);
  return [`${name}: ${message.slice(0, LONGEST_SHOWN)}`, ...at].join('\n');
}
