/** A picture's content: a JPEG, shrunk, without what a camera writes beside it. */
export interface StoredPhoto {
  /** SHA-256 of its bytes: two of one name are the same */
  readonly id: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A picture larger than this is none of this app's, bytes. */
export const LARGEST_PHOTO = 2_000_000;

/** First bytes of a JPEG. */
const START = [0xff, 0xd8, 0xff] as const;

/** Whether some bytes are a picture that the notebook takes. */
export const isPhoto = (bytes: Uint8Array): boolean =>
  bytes.length <= LARGEST_PHOTO && START.every((byte, n) => bytes[n] === byte);

/** As many bytes as `String.fromCharCode` takes at once everywhere. */
const CHUNK = 0x8000;

export function toBase64(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += CHUNK) {
    text += String.fromCharCode(...bytes.subarray(from, from + CHUNK));
  }
  return btoa(text);
}

/** @throws DOMException when the text is none */
export const fromBase64 = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
