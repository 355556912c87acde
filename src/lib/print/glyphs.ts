/**
 * Which characters the fonts can show. The ranges are taken from the fonts' own character maps (a test
 * compares them), so that a document is right before any font is loaded.
 */

const parse = (ranges: string): readonly (readonly [number, number])[] =>
  ranges.split(' ').map((entry) => {
    const [first = '', last = first] = entry.split('-');
    return [Number.parseInt(first, 16), Number.parseInt(last, 16)];
  });

/** Atkinson Hyperlegible Next 0.4.1, all weights. */
export const textRanges = parse(
  '20-7e a0-ac ae-b4 b6-107 10a-113 116-11b 11e-123 126-127 12a-12b 12e-133 136-137 139-13e 141-148 150-155 158-15b 15e-165 16a-16b 16e-17e 192 218-21b 237 2c6-2c7 2c9 2d8-2dd 300-304 306-308 30a-30c 312 326-328 394 3a9 3bc 3c0 1e80-1e85 1e9e 1ef2-1ef3 2009 2013-2014 2018-201a 201c-201e 2020-2022 2026 2030 2039-203a 2044 20ac 20b9 2113 2122 212e 2202 220f 2211-2212 2215 2219-221a 221e 222b 2248 2260 2264-2265 25ca 266a',
);

/**
 * The part of Roboto used for what the text font lacks: other Latin, Greek and Cyrillic letters, primes and
 * subscripts.
 */
export const rareRanges = parse(
  '108-109 114-115 11c-11d 124-125 128-129 12c-12d 134-135 138 13f-140 149-14f 156-157 15c-15d 166-169 16c-16d 17f 18f 1a0-1a1 1af-1b0 1fa-1ff 259 384-38a 38c 38e-3a1 3a3-3ce 400-486 488-513 1e00-1e01 1e3e-1e3f 1ea0-1ef9 2032-2033 2070 2074-208e 2116 2126 215b-215e',
);

const within = (ranges: readonly (readonly [number, number])[], code: number): boolean =>
  ranges.some(([first, last]) => code >= first && code <= last);

/** The font that has a character, or null when neither has. */
export function faceOf(character: string): 'text' | 'rare' | null {
  const code = character.codePointAt(0) ?? 0;
  if (within(textRanges, code)) return 'text';
  return within(rareRanges, code) ? 'rare' : null;
}
