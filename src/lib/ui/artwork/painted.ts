import type { Pixels } from '$lib/work/art.worker.ts';

/** Paints a picture onto a canvas. */
export const painted =
  ({ width, height, rgba }: Pixels) =>
  (canvas: HTMLCanvasElement): void => {
    canvas.width = width;
    canvas.height = height;
    canvas.getContext('2d')?.putImageData(new ImageData(rgba, width, height), 0, 0);
  };
