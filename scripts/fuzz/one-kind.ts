// One kind of input in a process of its own, which the runner watches: what it has done so far goes to the runner.
import { loadAllCatalogues } from '../../src/languages/index.ts';
import { kindsOf } from './kinds.ts';
import { runKind } from './run-kind.ts';

const [name, inputs, seed, timed] = process.argv.slice(2);
await loadAllCatalogues();
const kind = kindsOf().find((each) => each.name === name);
if (!kind) throw new Error(`fuzz › kind: expected one that there is, got ${name}`);
const onBatch = (report: object) => void process.send?.(report);
const options = { inputs: Number(inputs), seed: Number(seed), isTimed: timed !== 'false', onBatch };
await kind.use((each) => runKind(each, options));
process.disconnect?.();
