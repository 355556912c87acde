import { sveltekit } from '@sveltejs/kit/vite';
import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import { projects } from './test/projects.ts';

const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8')) as {
  version: string;
};

export default defineConfig({
  plugins: [sveltekit()],
  define: { __APP_VERSION__: JSON.stringify(version) },
  // Inlined assets become data: addresses, which the content security policy refuses for fonts.
  build: { assetsInlineLimit: 0 },
  // A worker's own chunks are missing from the service worker's list, so each worker is one file.
  worker: { format: 'es', rolldownOptions: { output: { codeSplitting: false } } },
  optimizeDeps: { include: ['pdfmake/build/pdfmake'] },
  preview: { port: 4173, strictPort: true },
  test: {
    environment: 'node',
    // a loaded machine of two cores is slow, not wrong; proofs try more cases
    testTimeout: 30_000 * Number(process.env['ETCHWRIGHT_PROOFS'] ?? 1),
    // left to itself it would keep one of two cores free
    maxWorkers: 2,
    projects,
  },
});
