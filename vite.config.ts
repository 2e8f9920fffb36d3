// Builds the web app into dist/web, ready for any plain file server: no inline script, no data address.
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { installable } from './scripts/installable.ts';
import { parsedEnglish, parsedMessages, spokenParts } from './scripts/lean.ts';

/** What shapes words asks for a module of Node's, only where it runs in Node: nothing to bundle. */
const nodeOnly: Plugin = {
  name: 'samewise-node-only',
  enforce: 'pre',
  resolveId: (id, importer) =>
    id === 'module' && importer?.includes('/harfbuzzjs/') ? { id, external: true } : undefined,
};

const SCHEMAS = 'zod';
const QUIET_SCHEMAS = '\0quiet-schemas';

/** What checks data tries whether it may run text, which the policy of the page stops and tells; it is not to try. */
const noTextRun: Plugin = {
  name: 'samewise-no-text-run',
  enforce: 'pre',
  resolveId: (id, importer) =>
    id === SCHEMAS && importer !== QUIET_SCHEMAS
      ? { id: QUIET_SCHEMAS, moduleSideEffects: true }
      : undefined,
  load: (id) =>
    id === QUIET_SCHEMAS
      ? `import { config } from '${SCHEMAS}'; config({ jitless: true }); export * from '${SCHEMAS}';`
      : undefined,
};

export default defineConfig({
  base: './',
  plugins: [noTextRun, parsedMessages(), react(), parsedEnglish(), spokenParts(), installable()],
  worker: {
    format: 'es',
    plugins: () => [nodeOnly, noTextRun, parsedMessages(), parsedEnglish()],
    rolldownOptions: {
      // The worker that draws on the screen takes nothing from the PDF library, so it must not carry it.
      treeshake: {
        moduleSideEffects: [{ test: /node_modules\/(pdfkit|fontkit)\//, sideEffects: false }],
      },
    },
  },
  build: {
    outDir: 'dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
    rolldownOptions: {
      // The records need a few facts of the core; the screen must not carry all activities for them.
      treeshake: {
        moduleSideEffects: [{ test: /\/src\/(?!web\/)/, sideEffects: false }],
      },
    },
  },
});
