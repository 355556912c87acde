import pdfMake from 'pdfmake/build/pdfmake';
import type { FontFiles } from './make-papers.ts';
import type { PressOrder } from './order.ts';
import { faces } from './paper.ts';
import { documentOf } from './papers.ts';

export interface PapersQuestion {
  readonly id: number;
  readonly wanted: PressOrder;
  /** absolute addresses on this app's own origin */
  readonly fonts: FontFiles;
}

export type PapersReply = { readonly id: number } & (
  { readonly ok: true; readonly blob: Blob } | { readonly ok: false; readonly error: string }
);

addEventListener('message', ({ data }: MessageEvent<PapersQuestion>) => {
  const { id, wanted, fonts } = data;
  pdfMake.setFonts({
    [faces.text]: { normal: fonts.regular, bold: fonts.bold },
    [faces.quiet]: { normal: fonts.light, bold: fonts.halfBold },
    [faces.rare]: { normal: fonts.rare, bold: fonts.rare },
  });
  pdfMake
    .createPdf(documentOf(wanted))
    .getBlob()
    .then(
      (blob: Blob) => {
        postMessage({ id, ok: true, blob } satisfies PapersReply);
      },
      (error: unknown) => {
        postMessage({ id, ok: false, error: String(error) } satisfies PapersReply);
      },
    );
});
