import { fnv1a64, folded } from '../core/units/fnv.ts';

/** Crockford's base 32: no I, L, O or U. */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
/** Letters that people write for a sign that looks alike. */
const lookalikes: Readonly<Record<string, string>> = { O: '0', I: '1', L: '1' };

const LETTERS = 7;
const BITS_A_LETTER = 5;

/** Doubles a value in the field of 32 elements, over x⁵ + x² + 1. */
const doubled = (value: number): number => {
  const shifted = value << 1;
  return shifted & 0x20 ? shifted ^ 0x25 : shifted;
};

/**
 * The sum of the letters, each doubled once for every letter after it. Any one wrong letter, and any two
 * neighbours swapped, give another sum.
 */
const checkOf = (values: readonly number[]): number => values.reduce((sum, value) => doubled(sum ^ value), 0);

const letter = (value: number): string => ALPHABET.charAt(value);

/** Seven letters of the text's fingerprint and a check letter, as "7K2M-9QXA". */
export function shortCode(text: string): string {
  const print = folded(fnv1a64(new TextEncoder().encode(text)), LETTERS * BITS_A_LETTER);
  const values = Array.from(
    { length: LETTERS },
    (_, i) => Math.floor(print / 2 ** (BITS_A_LETTER * (LETTERS - 1 - i))) % 2 ** BITS_A_LETTER,
  );
  const all = [...values, checkOf(values)].map(letter).join('');
  return `${all.slice(0, 4)}-${all.slice(4)}`;
}

/**
 * Reads a code as typed: capitals, spaces and dashes make no difference, O is 0, I and L are 1.
 * @returns the code as printed; null when it is not a code, or its check letter is wrong
 */
export function readShortCode(typed: string): string | null {
  const plain = typed
    .toUpperCase()
    .replace(/[\s-]/g, '')
    .replace(/[OIL]/g, (sign) => lookalikes[sign] ?? sign);
  const values = Array.from(plain, (sign) => ALPHABET.indexOf(sign));
  if (values.length !== LETTERS + 1 || values.includes(-1)) return null;
  if (checkOf(values.slice(0, LETTERS)) !== values[LETTERS]) return null;
  return `${plain.slice(0, 4)}-${plain.slice(4)}`;
}

/** Whether a code was probably meant: eight letters or digits, in any grouping. */
export const looksLikeCode = (typed: string): boolean => /^[0-9A-Z]{8}$/i.test(typed.replace(/[\s-]/g, ''));
