import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** From so many bytes on the browser's own is faster, though it has to be waited for. */
const LARGE = 8192;

/**
 * SHA-256 in hexadecimal. A page that came over plain http is given no digest by its browser: the library's is the
 * same.
 */
export async function sha256Of(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const own = (globalThis.crypto as Crypto | undefined)?.subtle;
  if (own === undefined || bytes.length < LARGE) return bytesToHex(sha256(bytes));
  return bytesToHex(new Uint8Array(await own.digest('SHA-256', bytes)));
}
