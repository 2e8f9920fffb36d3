#!/usr/bin/env node
// Starts the command line that `npm run build:cli` builds from src/cli.
import { existsSync } from 'node:fs';

const program = new URL('../dist/cli/samewise.js', import.meta.url);
if (existsSync(program)) {
  await import(program.href);
} else {
  process.stderr.write('samewise: it is not built yet. Run "npm run build:cli" in its folder.\n');
  process.exitCode = 2;
}
