import pdfmake from 'pdfmake';
import type { PressOrder } from './order.ts';
import { faces } from './paper.ts';
import { documentOf } from './papers.ts';

/** Paths of the fonts, one for each weight. */
export interface FontFiles {
  readonly light: string;
  readonly regular: string;
  readonly halfBold: string;
  readonly bold: string;
  /** for the few letters that the text font lacks, in bold text too */
  readonly rare: string;
}

/** Makes papers as one PDF. A plan without refusals gives the same bytes each time. */
export async function makePapers(wanted: PressOrder, files: FontFiles): Promise<Uint8Array> {
  const own = new Set<string>(Object.values(files));
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy((path) => own.has(path));
  pdfmake.setFonts({
    [faces.text]: { normal: files.regular, bold: files.bold },
    [faces.quiet]: { normal: files.light, bold: files.halfBold },
    [faces.rare]: { normal: files.rare, bold: files.rare },
  });
  return new Uint8Array(await pdfmake.createPdf(documentOf(wanted)).getBuffer());
}
