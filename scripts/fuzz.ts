// Gives hostile inputs to everything that reads from outside: `npm run fuzz [inputs] [seed] [kind]`.
import { kindsOf } from './fuzz/kinds.ts';
import type { Report } from './fuzz/run-kind.ts';
import { buildKinds, type Ended, watched } from './fuzz/watched.ts';

const USUAL_INPUTS = 100_000;

/** Exit code 1 where anything was found. */
export async function main([
  inputs = String(USUAL_INPUTS),
  seed = '1',
  only,
]: readonly string[]): Promise<void> {
  if (!(Number(inputs) > 0)) throw new Error(`fuzz › inputs: expected a number, got ${inputs}`);
  const names = kindsOf().map(({ name }) => name);
  const wanted = names.filter((name) => only === undefined || name === only);
  if (wanted.length === 0) {
    throw new Error(`fuzz › kind: expected ${names.join(', ')}; got ${only}`);
  }
  await buildKinds();
  console.log(`${inputs} inputs of each kind, seed ${seed} (npm run fuzz ${inputs} ${seed})\n`);
  let failures = 0;
  for (const name of wanted) {
    failures += tell(
      await watched(name, Number(inputs), Number(seed), { onProgress: tellProgress }),
    );
  }
  console.log(
    `\n${wanted.length} kinds: ${failures === 0 ? 'nothing found' : `${failures} found`}`,
  );
  process.exitCode = failures === 0 ? 0 : 1;
}

function tellProgress({ kind, inputs, longestMs, failures }: Report): void {
  console.error(
    `  ${kind}: ${inputs} inputs, longest ${longestMs.toFixed(0)} ms, ${failures.length} found`,
  );
}

/** How many things were found. */
function tell({ kind, inputs, longestMs, longest, heapBytes, failures, end }: Ended): number {
  const heap = `${Math.round(heapBytes / 1e6)} MB live at most`;
  console.log(
    `${kind.padEnd(13)} ${String(inputs).padStart(7)} inputs  longest ${longestMs.toFixed(0).padStart(5)} ms  ${heap}  ${failures.length} found`,
  );
  console.log(`  longest: ${longest.slice(0, 160)}`);
  for (const { message, input, seed, times } of failures) {
    console.log(`  seed ${seed}, in ${times} batches: ${message}\n    input: ${input}`);
  }
  if (end !== undefined) console.log(`  ${end}`);
  return failures.length + (end === undefined ? 0 : 1);
}
