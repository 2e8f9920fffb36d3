// Tests: those beside the code, those across folders and those in a real browser, in one run.
import { readdirSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

/** What lasts for as long as a process runs: a module in another's place, fonts, catalogues. */
const LASTING = /\bvi\.mock\(|\b(load(All)?(Scripts?|Catalogues?)|speakIn)\b/;

/** Tests beside the code that leave behind what others would find. */
const leaving = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((file) => `src/${file}`)
  .filter((file) => file.endsWith('.test.ts') && LASTING.test(readFileSync(file, 'utf8')));

export default defineConfig({
  test: {
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'code',
          include: ['src/**/*.test.ts'],
          exclude: leaving,
          // Modules are loaded, and what they find out once is found, once for all these files.
          isolate: false,
          setupFiles: 'tests/leaves-nothing.ts',
        },
      },
      {
        extends: true,
        test: {
          name: 'across',
          include: ['tests/**/*.test.ts', ...leaving],
          exclude: ['tests/screens/**'],
        },
      },
      { extends: true, test: { name: 'screens', include: ['tests/screens/**/*.test.ts'] } },
    ],
  },
});
