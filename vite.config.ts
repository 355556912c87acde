import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [sveltekit()],
  // Inlined assets become data: addresses, which the content security policy refuses for fonts.
  build: { assetsInlineLimit: 0 },
  // A worker's own chunks are missing from the service worker's list, so each worker is one file.
  worker: { format: 'es', rolldownOptions: { output: { codeSplitting: false } } },
  optimizeDeps: { include: ['pdfmake/build/pdfmake'] },
  preview: { port: 4173, strictPort: true },
  test: {
    environment: 'node',
    include: ['test/{unit,reference,verification,property,procedure,architecture}/**/*.test.ts'],
  },
});
