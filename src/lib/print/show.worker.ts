/** Reads PDFs for the preview; it listens as soon as it is loaded. */
import 'pdfjs-dist/legacy/build/pdf.worker.min.mjs';
