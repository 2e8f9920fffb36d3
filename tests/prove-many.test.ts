// Proving very many tasks gives the same whatever the number of threads that share the work.
import { expect, test } from 'vitest';
import { proveMany } from '../scripts/prove-many.ts';
import { testSeed } from './seed.ts';

/** More than one part of each activity, the last one smaller. */
const TASKS = 2500;
const ACTIVITIES = ['size-order', 'turned-shapes'] as const;

test('one thread and two prove the same tasks, each of them certain', async () => {
  const asked = { tasks: TASKS, seed: testSeed('tasks proven on threads'), activities: ACTIVITIES };
  const told: number[] = [];
  const one = await proveMany({ ...asked, threads: 1 }, (done) => told.push(done));
  const two = await proveMany({ ...asked, threads: 2 }, () => undefined);
  expect(two.hash).toBe(one.hash);
  expect(one.tallies.map(({ tasks }) => tasks)).toEqual([TASKS / 2, TASKS / 2]);
  expect(one.tallies.filter(({ notCertain, failed }) => notCertain + failed > 0)).toEqual([]);
  expect(told.at(-1)).toBe(TASKS);
  const another = await proveMany({ ...asked, seed: asked.seed + 1, threads: 1 }, () => undefined);
  expect(another.hash).not.toBe(one.hash);
});
