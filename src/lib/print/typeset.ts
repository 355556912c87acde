import type { Style } from 'pdfmake/interfaces';
import { faceOf } from './glyphs.ts';
import { faces } from './paper.ts';

/** A run of text in one font. */
export type TextRun = Style & { readonly text: string };

/** Shown for a letter that no font has: easier to notice than an empty box. */
const STAND_IN = '?';

/** Characters replaced by others with the same meaning, which the fonts have. */
const sameMeaning: Readonly<Record<string, string>> = {
  Σ: '∑',
  µ: 'μ',
  '⋅': '·',
  '‐': '-',
  '‑': '-',
  '\t': ' ',
  '\n': ' ',
  '\u2007': '\u00a0',
  '\u202f': '\u00a0',
};

const subscripts = '₀₁₂₃₄₅₆₇₈₉';
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

const isShown = (text: string): boolean => Array.from(text).every((character) => faceOf(character) !== null);

/** A letter as it can be shown: itself, its plain form, or the stand-in. */
function shownLetter(letter: string): string {
  const composed = Array.from(letter.normalize('NFC'))
    .map((character) => sameMeaning[character] ?? character)
    .join('');
  if (isShown(composed)) return composed;
  if (/^[\p{Cc}\p{Cf}]+$/u.test(composed)) return '';
  const plain = composed.normalize('NFKD').replace(/\p{M}|\p{Cf}/gu, '');
  return plain !== '' && isShown(plain) ? plain : STAND_IN;
}

/** Whether a text has only letters that every font has, so that none need be looked up. */
const isPlain = (text: string): boolean => /^[\x20-\x7e\xa0-\xac\xb0-\xb4\xb7]*$/.test(text);

/** The text with every letter replaced that no font has, for places that need a plain string. */
export const showable = (text: string): string =>
  isPlain(text)
    ? text
    : [...graphemes.segment(text)]
        .map(({ segment }) => (subscripts.includes(segment) ? segment : shownLetter(segment)))
        .join('');

function styleOf(character: string): { text: string; style: Style } {
  const index = subscripts.indexOf(character);
  if (index >= 0) return { text: String(index), style: { sub: true } };
  return { text: character, style: faceOf(character) === 'rare' ? { font: faces.rare } : {} };
}

/**
 * A text as runs, each in a font that has all its letters. Subscript digits become small runs.
 * @param style of every run in the surrounding font
 */
export function typeset(text: string, style: Style = {}): TextRun[] {
  if (isPlain(text)) return [{ ...style, text }];
  const runs: TextRun[] = [];
  let last = '';
  for (const character of showable(text)) {
    const { text: piece, style: own } = styleOf(character);
    const key = JSON.stringify(own);
    const before = runs.at(-1);
    if (before && key === last) runs[runs.length - 1] = { ...before, text: before.text + piece };
    else runs.push({ ...style, ...own, text: piece });
    last = key;
  }
  return runs.length > 0 ? runs : [{ ...style, text: '' }];
}

/** A formula as runs. The letter that tells one V, R or ρ from another becomes a subscript. */
export const typesetFormula = (formula: string, style: Style = {}): TextRun[] =>
  formula
    .split(/(?<=[VRρ])([wlm])(?![a-z])/)
    .flatMap((part, i) => (i % 2 === 1 ? [{ ...style, text: part, sub: true }] : typeset(part, style)));
