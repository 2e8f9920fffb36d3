// Builds the web app into dist/web, ready for any plain file server: no inline script, no data address.
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { installable } from './scripts/installable.ts';

export default defineConfig({
  base: './',
  plugins: [react(), installable()],
  worker: {
    format: 'es',
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
