// Runs a TypeScript file of this project: `node scripts/run.mjs bench/bench.ts`; the file's `main` gets the rest.
import { resolve } from 'node:path';
import { runnerImport } from 'vite';
import { ROOT } from './install.mjs';

const [file, ...words] = process.argv.slice(2);
const { module } = await runnerImport(resolve(ROOT, file), {
  root: ROOT,
  configFile: false,
  logLevel: 'warn',
});
await module.main(words);
