import fc from 'fast-check';
import { expect, test } from 'vitest';
import { looksLikeCode, readShortCode, shortCode } from '../../../src/lib/link/short-code.ts';

const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const anyCode = fc.string({ minLength: 1, maxLength: 80 }).map(shortCode);

test('a code is eight letters without I, L, O and U, in two fours', () => {
  fc.assert(
    fc.property(anyCode, (code) => {
      expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
      expect(readShortCode(code)).toBe(code);
    }),
  );
});

test('it is read as hands type it', () => {
  const code = Array.from({ length: 4000 }, (_, i) => shortCode(String(i))).find(
    (made) => made.includes('0') && made.includes('1'),
  ) as string;
  for (const typed of [
    code.toLowerCase(),
    code.replace('-', ''),
    ` ${code.replace('-', ' ')} `,
    code.replace(/0/g, 'O').replace(/1/g, 'l'),
    code.replace(/0/g, 'o').replace(/1/g, 'I'),
  ]) {
    expect(readShortCode(typed), typed).toBe(code);
  }
});

test('any one wrong letter is noticed', () => {
  fc.assert(
    fc.property(anyCode, fc.nat(7), fc.nat(31), (code, at, other) => {
      const plain = code.replace('-', '');
      const wrong = ALPHABET.charAt(other);
      fc.pre(wrong !== plain.charAt(at));
      expect(readShortCode(plain.slice(0, at) + wrong + plain.slice(at + 1))).toBeNull();
    }),
    { numRuns: 2000 },
  );
});

test('any two neighbours changed round are noticed', () => {
  fc.assert(
    fc.property(anyCode, fc.nat(6), (code, at) => {
      const [...letters] = code.replace('-', '');
      const [a = '', b = ''] = [letters[at], letters[at + 1]];
      fc.pre(a !== b);
      letters.splice(at, 2, b, a);
      expect(readShortCode(letters.join(''))).toBeNull();
    }),
    { numRuns: 2000 },
  );
});

test.each(['', 'seed', '7K2M-9QX', '7K2M-9QXAA', 'UUUU-UUUU', '1AbC_-9', 'ÄÖÜß1234'])(
  '"%s" is no code',
  (typed) => {
    expect(readShortCode(typed)).toBeNull();
  },
);

test('a mistyped code is still told from other text', () => {
  expect(looksLikeCode('7k2m 9qxa')).toBe(true);
  expect(looksLikeCode('#start=1AAAA')).toBe(false);
});
