import { isPhoto, LARGEST_PHOTO } from '../notebook/photo-store.ts';
import type { StoredPhoto } from '../notebook/photo-store.ts';
import { sha256Of } from '../notebook/sha256.ts';

/** What a picture of a job can show, in the order of the work. */
export const photoKinds = ['masked', 'stripped', 'finished'] as const;
export type PhotoKind = (typeof photoKinds)[number];

/** Longest side of a stored picture, px: large enough to see an edge, small enough for hundreds of them. */
const LONGEST = 1600;
/** Qualities of the JPEG, tried in turn until the file is small enough. */
const QUALITIES = [0.85, 0.6, 0.4] as const;

/**
 * Prepares a picture for the notebook. It is shrunk and written anew, so that data added by the camera, such
 * as a place, is left out.
 * @returns null for a file that this browser cannot open as a picture
 */
export async function photoFrom(file: Blob): Promise<StoredPhoto | null> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file);
  } catch {
    return null;
  }
  const scale = Math.min(1, LONGEST / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const pen = canvas.getContext('2d');
  if (!pen) return null;
  // a JPEG cannot be transparent
  pen.fillStyle = 'white';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  for (const quality of QUALITIES) {
    const blob = await new Promise<Blob | null>((done) => {
      canvas.toBlob(done, 'image/jpeg', quality);
    });
    if (!blob || blob.size > LARGEST_PHOTO) continue;
    const bytes = new Uint8Array(await blob.arrayBuffer());
    if (isPhoto(bytes)) return { id: await sha256Of(bytes), bytes };
  }
  return null;
}

/** An address for showing a picture. It must be revoked afterwards. */
export const addressOf = ({ bytes }: StoredPhoto): string =>
  URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' }));
