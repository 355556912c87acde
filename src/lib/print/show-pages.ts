import { getDocument, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.mjs';

/*
 * The app draws the preview itself: Android shows no PDF inside a page, iOS its first page only, and the
 * page's own policy forbids frames of blobs. Price: 0.45 MB of the offline files, fetched at the first
 * preview. Reopen when phones show PDFs in a page.
 */

/** More dots than this to a point of the screen nobody sees, and old phones run out of memory. */
const MOST_DOTS = 2;

/**
 * Draws the pages of a PDF of our own, one after another. Phones show no PDF inside a page (Android's
 * browsers none at all, iOS its first page only), so the app draws it itself.
 * @param width of a page on screen, px
 * @param onpage called as each page is done
 * @param isWanted asked before each page: the maker may have gone on
 */
export async function showPages(
  file: Blob,
  width: number,
  onpage: (page: HTMLCanvasElement) => void,
  isWanted: () => boolean,
): Promise<void> {
  const port = new Worker(new URL('./show.worker.ts', import.meta.url), { type: 'module' });
  const worker = PDFWorker.create({ port });
  const task = getDocument({
    data: new Uint8Array(await file.arrayBuffer()),
    worker,
    isEvalSupported: false,
    useWasm: false,
    // letters as outlines: the page's own fonts stay as they are
    disableFontFace: true,
  });
  try {
    const pdf = await task.promise;
    const dots = Math.min(devicePixelRatio, MOST_DOTS);
    for (let number = 1; number <= pdf.numPages && isWanted(); number += 1) {
      const page = await pdf.getPage(number);
      const [, , points = 1] = page.view;
      const viewport = page.getViewport({ scale: (width * dots) / points });
      const canvas = document.createElement('canvas');
      canvas.width = Math.round(viewport.width);
      canvas.height = Math.round(viewport.height);
      await page.render({ canvas, viewport }).promise;
      if (isWanted()) onpage(canvas);
    }
  } finally {
    await task.destroy();
    port.terminate();
  }
}
