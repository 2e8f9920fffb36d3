// What keeping the heap small promises: a long run holds little more memory than what it keeps.
import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { expect, it } from 'vitest';
import { keepHeapSmall } from './heap.ts';

/** Holds 200 lists of 320 kB, throws each away for a new one some times, and tells the most that lay about, in bytes. */
const CHURN = `
const { parentPort } = require('node:worker_threads');
const { getHeapStatistics } = require('node:v8');
const list = () => new Array(40_000).fill(0.5);
const held = Array.from({ length: 200 }, list);
let most = 0;
for (let turn = 0; turn < 1_500; turn++) {
  held[turn % held.length] = list();
  most = Math.max(most, getHeapStatistics().used_heap_size);
}
parentPort.postMessage(most);
`;

async function mostHeld(): Promise<number> {
  const worker = new Worker(CHURN, { eval: true });
  const [most]: unknown[] = await once(worker, 'message');
  await once(worker, 'exit');
  return Number(most);
}

it('lets a worker that is begun after it hold three quarters, at the most, of what it would else', async () => {
  const usual = await mostHeld();
  keepHeapSmall();
  expect(await mostHeld()).toBeLessThan(0.75 * usual);
}, 120_000);
