// Builds the command line for Node. What it uses of small packages is built in, so that it starts
// quickly; the PDF library, which reads files of its own, stays in node_modules.
import { defineConfig } from 'vite';

export default defineConfig({
  publicDir: false,
  ssr: { noExternal: true, external: ['pdfkit', 'fontkit', 'harfbuzzjs'] },
  build: {
    ssr: true,
    outDir: 'dist/cli',
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    rollupOptions: {
      // A worker is a program of its own.
      input: { samewise: 'src/cli/samewise.ts', 'year-worker': 'src/cli/year/worker.ts' },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name].js' },
    },
  },
});
