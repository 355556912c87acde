import { getDocument, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.mjs';

/*
 * The app draws the preview itself, because Android shows no PDF inside a page, iOS only its first page, and
 * the page's own policy forbids frames of blobs. It costs 0.45 MB of the offline files, loaded for the first
 * preview. Reconsider when phones show PDFs in a page.
 */

/** Highest resolution, dots to a point of the screen. Nobody sees more, and old phones run out of memory. */
const MOST_DOTS = 2;

/**
 * Draws the pages of one of our PDFs, one after another.
 * @param width of a page on screen, px
 * @param onpage called when a page is done
 * @param isWanted asked before each page, because the maker may have left
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
    // draw letters as outlines, so that no fonts are added to the page
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
