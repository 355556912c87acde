import { countryOf } from '../core/facts/countries.ts';
import { otherCountryNames } from '$words/countries.ts';
import { language } from '$words/locale.ts';

/*
 * A country is kept by its two letters, and typed as its maker writes it: by letters, by its name in the language of the
 * app, or as it calls itself. The names are the browser's own, so that none has to be kept here.
 */

/** Codes that have a name and are no country; and one that stands for Northern Ireland in the lines of law. */
const noCountries = new Set(['EU', 'EZ', 'NI', 'QO', 'UN', 'XA', 'XB', 'ZZ']);

const letters = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZ');

/** A name as it is compared: without dots, accents, capitals or a leading article. */
const bare = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/[\u0300-\u036f.]/g, '')
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/^the /, '');

const namesIn = (of: string): Intl.DisplayNames =>
  new Intl.DisplayNames([of], { type: 'region', fallback: 'none' });

/** A code as it is written today: some belong to countries that have another one now. */
const codeNow = (code: string): string => new Intl.Locale(`und-${countryOf(code)}`).region ?? code;

let kept: ReadonlyMap<string, string> | null = null;

/** Codes by every name that is understood; made when first asked for, as it takes some hundred look-ups. */
function codesByName(): ReadonlyMap<string, string> {
  if (kept) return kept;
  const known = namesIn(language);
  const all = letters.flatMap((first) => letters.map((second) => first + second));
  const codes = all.filter((code) => !noCountries.has(code) && codeNow(code) === code && known.of(code));
  const own = codes.map((code) => [
    namesIn(new Intl.Locale(`und-${code}`).maximize().language).of(code) ?? '',
    code,
  ]);
  const here = codes.map((code) => [known.of(code) ?? '', code]);
  const others = Object.entries(otherCountryNames).flatMap(([code, names]) =>
    names.map((name) => [name, code]),
  );
  // what a later list says of a name holds: the app's own language before others, and our own words before both
  kept = new Map([...own, ...here, ...others].map(([name = '', code = '']) => [bare(name), code]));
  return kept;
}

/**
 * The code that a typed country is kept by.
 * @returns what was typed, as no code is written, where it names no country that is known here
 */
export function countryTyped(typed: string): string {
  const plain = bare(typed);
  if (plain === '') return '';
  if (!/^[a-z]{2}$/.test(plain)) return codesByName().get(plain) ?? typed.trim();
  const code = codeNow(plain);
  const isKnown = code === 'NI' || (!noCountries.has(code) && namesIn(language).of(code) !== undefined);
  return isKnown ? code : plain;
}

/** Two letters that laws are kept by; null for what names no country. */
export function countryCode(typed: string): string | null {
  const code = countryTyped(typed);
  return /^[A-Z]{2}$/.test(code) ? code : null;
}
