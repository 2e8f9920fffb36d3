// Tests: those beside the code and those across folders in one run, those in a real browser in a second project.
import { defineConfig } from 'vitest/config';

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
          include: ['src/**/*.test.ts', 'tests/**/*.test.ts'],
          exclude: ['tests/screens/**'],
        },
      },
      {
        extends: true,
        test: { name: 'screens', include: ['tests/screens/**/*.test.ts'], fileParallelism: false },
      },
    ],
  },
});
