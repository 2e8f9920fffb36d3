// The seed of all randomised tests: fixed, so that a red run can be repeated; another with SAMEWISE_SEED=n.

const DEFAULT_SEED = 20261125;

/** The seed of this run; printed once by each test file that uses it. */
export function testSeed(what: string): number {
  const seed = Number(process.env.SAMEWISE_SEED ?? DEFAULT_SEED);
  console.log(`${what}: seed ${seed} (SAMEWISE_SEED=${seed} repeats it)`);
  return seed;
}
