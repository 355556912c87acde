import { expect, test } from 'vitest';
import { fnv1a32, fnv1a64, folded } from '../../../../src/lib/core/units/fnv.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

/** Test vectors that the function's authors publish with it, FNV-1a of 64 bits; from memory. */
test.each([
  ['', 0xcbf29ce484222325n],
  ['a', 0xaf63dc4c8601ec8cn],
  ['b', 0xaf63df4c8601f1a5n],
  ['foobar', 0x85944171f73967e8n],
])('FNV-1a of "%s" is as published', (text, hash) => {
  expect(fnv1a64(bytes(text))).toBe(hash);
});

test('folding takes every bit into account', () => {
  const hash = fnv1a64(bytes('seed-head'));
  for (let bit = 0n; bit < 64n; bit += 1n) {
    expect(folded(hash ^ (1n << bit), 35)).not.toBe(folded(hash, 35));
  }
  expect(folded(0xffffffffffffffffn, 24)).toBeLessThan(2 ** 24);
});

/** The same authors' vectors for 32 bits; from memory. */
test.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['foobar', 0xbf9cf968],
])('FNV-1a of "%s" in 32 bits is as published', (text, hash) => {
  expect(fnv1a32(text)).toBe(hash);
});
