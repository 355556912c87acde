/** A picture: a JPEG, shrunk, without the data that a camera adds. */
export interface StoredPhoto {
  /** SHA-256 of its bytes, so that equal pictures have equal ids */
  readonly id: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Largest picture that this app writes, bytes. */
export const LARGEST_PHOTO = 2_000_000;

/** First bytes of a JPEG. */
const START = [0xff, 0xd8, 0xff] as const;

/** Whether bytes are a picture that the notebook accepts. */
export const isPhoto = (bytes: Uint8Array): boolean =>
  bytes.length <= LARGEST_PHOTO && START.every((byte, n) => bytes[n] === byte);

/** Number of bytes that `String.fromCharCode` accepts at once in every browser. */
const CHUNK = 0x8000;

export function toBase64(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += CHUNK) {
    text += String.fromCharCode(...bytes.subarray(from, from + CHUNK));
  }
  return btoa(text);
}

/** @throws DOMException when the text is not base 64 */
export const fromBase64 = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
