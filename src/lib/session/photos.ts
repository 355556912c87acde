import { isPhoto, LARGEST_PHOTO } from '../notebook/photo-store.ts';
import type { StoredPhoto } from '../notebook/photo-store.ts';
import { sha256Of } from '../notebook/sha256.ts';

/** What a picture of a job may show, in the order of the work. */
export const photoKinds = ['masked', 'stripped', 'finished'] as const;
export type PhotoKind = (typeof photoKinds)[number];

/** Longest side of a kept picture, px: enough to see an edge, small enough to keep hundreds. */
const LONGEST = 1600;
/** Of the JPEG, tried in turn until it is small enough. */
const QUALITIES = [0.85, 0.6, 0.4] as const;

/**
 * A picture made ready to keep: shrunk and written anew, so that nothing a camera noted beside it, such as a place,
 * comes along.
 * @returns null for what is no picture that this browser opens
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
  // a JPEG has no see-through
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

/** An address to show a picture by; to be given back when it is no longer shown. */
export const addressOf = ({ bytes }: StoredPhoto): string =>
  URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' }));
