import { createRequire } from 'node:module';
import type { FontFiles } from '../lib/print/make-papers.ts';

/** Finds the fonts in node_modules, also when run from a bundle in its cache. */
export function fontFiles(): FontFiles {
  const { resolve } = createRequire(import.meta.url);
  const text = (weight: string): string =>
    resolve(`@expo-google-fonts/atkinson-hyperlegible-next/${weight}/AtkinsonHyperlegibleNext_${weight}.ttf`);
  return {
    light: text('300Light'),
    regular: text('400Regular'),
    halfBold: text('600SemiBold'),
    bold: text('700Bold'),
    rare: resolve('pdfmake/fonts/Roboto/Roboto-Regular.ttf'),
  };
}
