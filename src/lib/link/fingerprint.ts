/** FNV-1a, 64 bit: offset basis and prime as published with the function. */
const BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;
const ALL = 0xffffffffffffffffn;

/** Tells one text from another; no seal against forgery. */
export function fnv1a64(bytes: Uint8Array): bigint {
  let hash = BASIS;
  for (const byte of bytes) hash = ((hash ^ BigInt(byte)) * PRIME) & ALL;
  return hash;
}

/** Fewer bits of it, folded by exclusive or so that every bit counts. */
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
