import pdfmake from 'pdfmake';
import type { Plan } from '../core/plan/plan.ts';
import { jobPapers } from './order.ts';
import type { PapersOrder } from './order.ts';
import { faces } from './paper.ts';
import { papers } from './papers.ts';

/** Where the type lies: a file path for each weight. */
export interface FontFiles {
  readonly light: string;
  readonly regular: string;
  readonly halfBold: string;
  readonly bold: string;
  /** for the few letters that the text face lacks, bold or not */
  readonly rare: string;
}

/**
 * Makes papers of a plan as one PDF. The same plan and order give the same bytes.
 * @param plan without refusals
 */
export async function makePapers(
  plan: Plan,
  files: FontFiles,
  order: PapersOrder = jobPapers,
): Promise<Uint8Array> {
  const own = new Set<string>(Object.values(files));
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy((path) => own.has(path));
  pdfmake.setFonts({
    [faces.text]: { normal: files.regular, bold: files.bold },
    [faces.quiet]: { normal: files.light, bold: files.halfBold },
    [faces.rare]: { normal: files.rare, bold: files.rare },
  });
  return new Uint8Array(await pdfmake.createPdf(papers(plan, order)).getBuffer());
}
