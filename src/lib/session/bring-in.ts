import { isBomb, pictureHead } from '../core/mask/picture-size.ts';
import { LIMITS } from '../core/mask/raster.ts';
import type { BringInFault } from '../core/mask/raster.ts';
import type { Closed, Pixels } from '../work/art.worker.ts';

/** Number of pixels that a phone can process in a second. Drawings are drawn at this size. */
const WORK = 4_000_000;
/** Bytes of a file to read for its size. A drawing may not be larger. */
const HEAD = 512 * 1024;
const LARGEST_DRAWING = 4 * 1024 * 1024;
/** Longest side for a drawing that has no size of its own, pixels. */
const DRAWING = 1600;

function drawnOn(source: CanvasImageSource, width: number, height: number): Pixels {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('no canvas');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(source, 0, 0, width, height);
  const { data } = context.getImageData(0, 0, width, height);
  return { width, height, rgba: new Uint8ClampedArray(data.buffer) };
}

/** Draws a vector drawing as an image, so that its scripts, links and outside resources are not used. */
async function drawing(file: Blob): Promise<Pixels> {
  // a copy gets our own type, so that the type given by the file does not matter
  const url = URL.createObjectURL(new Blob([file], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const [wide, high] = [image.naturalWidth || DRAWING, image.naturalHeight || DRAWING];
    const scale = DRAWING / Math.max(wide, high);
    return drawnOn(image, Math.max(1, Math.round(wide * scale)), Math.max(1, Math.round(high * scale)));
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** Opens a picture on the page, for browsers whose workers cannot. */
async function openedHere({ file, shrink }: Closed): Promise<Pixels> {
  const bitmap = await createImageBitmap(file);
  const picture = drawnOn(bitmap, Math.round(bitmap.width * shrink), Math.round(bitmap.height * shrink));
  bitmap.close();
  return picture;
}

/**
 * Prepares a picture file. Nothing leaves the device. Of the data that a camera adds, only the rotation is
 * used.
 * @returns pixels; or, where a worker can open the file, the file and by how much to shrink it
 */
export async function bringIn(
  file: Blob,
): Promise<{ picture: Pixels } | { closed: Closed } | { fault: BringInFault }> {
  const head = pictureHead(new Uint8Array(await file.slice(0, HEAD).arrayBuffer()));
  if (head === null) return { fault: { id: 'notAPicture' } };
  const { kind, width, height } = head;
  try {
    if (kind === 'svg' || width === null || height === null) {
      if (file.size > LARGEST_DRAWING || isBomb(await file.text())) return { fault: { id: 'bomb' } };
      return { picture: await drawing(file) };
    }
    const side = Math.max(width, height);
    if (side > LIMITS.side) return { fault: { id: 'tooLarge', found: side, most: LIMITS.side } };
    const closed = { file, shrink: Math.min(1, Math.sqrt(WORK / (width * height))) };
    return 'OffscreenCanvas' in globalThis ? { closed } : { picture: await openedHere(closed) };
  } catch {
    return { fault: { id: 'broken' } };
  }
}
