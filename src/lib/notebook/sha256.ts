import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** From this many bytes on, the browser's own digest is faster, although it is asynchronous. */
const LARGE = 8192;

/**
 * SHA-256 in hexadecimal. Over plain http the browser offers no digest; then the library computes the same.
 */
export async function sha256Of(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const own = (globalThis.crypto as Crypto | undefined)?.subtle;
  if (own === undefined || bytes.length < LARGE) return bytesToHex(sha256(bytes));
  return bytesToHex(new Uint8Array(await own.digest('SHA-256', bytes)));
}
