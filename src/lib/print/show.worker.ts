/** Reads PDFs for the preview. The imported module starts listening by itself. */
import 'pdfjs-dist/legacy/build/pdf.worker.min.mjs';
