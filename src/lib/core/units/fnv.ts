/** Fowler, Noll and Vo's FNV-1a. It tells texts apart but does not protect against forgery. */

const BASIS_32 = 0x811c9dc5;
const PRIME_32 = 0x01000193;

/** 32-bit hash of a text's UTF-16 units. It is quick, so the text may be of any length. */
export function fnv1a32(text: string): number {
  let hash = BASIS_32;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), PRIME_32);
  return hash >>> 0;
}

const BASIS_64 = 0xcbf29ce484222325n;
const PRIME_64 = 0x100000001b3n;
const ALL_64 = 0xffffffffffffffffn;

export function fnv1a64(bytes: Uint8Array): bigint {
  let hash = BASIS_64;
  for (const byte of bytes) hash = ((hash ^ BigInt(byte)) * PRIME_64) & ALL_64;
  return hash;
}

/** Shortens a hash to fewer bits by exclusive or, so that every bit of the hash still counts. */
export function folded(hash: bigint, bits: number): number {
  const mask = (1n << BigInt(bits)) - 1n;
  let rest = hash;
  let fold = 0n;
  while (rest > 0n) {
    fold ^= rest & mask;
    rest >>= BigInt(bits);
  }
  return Number(fold);
}
