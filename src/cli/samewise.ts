// The program that `bin/samewise.js` starts.
import { loadAllCatalogues } from '../languages/index.ts';
import { keepHeapSmall } from './heap.ts';
import { run } from './program.ts';

keepHeapSmall();
await loadAllCatalogues();
process.exitCode = await run(process.argv.slice(2));
