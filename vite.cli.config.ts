// Builds the command line for Node. What it uses of small packages is built in, so that it starts
// quickly; the PDF library, which reads files of its own, stays in node_modules.
import { defineConfig } from 'vite';

export default defineConfig({
  publicDir: false,
  ssr: { noExternal: true, external: ['pdfkit', 'fontkit', 'harfbuzzjs'] },
  build: {
    ssr: 'src/cli/samewise.ts',
    outDir: 'dist/cli',
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    rollupOptions: { output: { entryFileNames: 'samewise.js', chunkFileNames: '[name].js' } },
  },
});
