import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { Amount, Param, Params } from '../../core/rules/rule.ts';
import type { TermId } from '../../core/rules/term.ts';
import type { Figure } from '../../core/units/figure.ts';
import { knownAmounts, knownText } from './known-amounts.ts';
import type { KnownAmount } from './known-amounts.ts';
import { ends, fromTo, plain, significant } from './locale.ts';
import { storedText } from './stored-text.ts';
import { terms } from './terms.ts';
import { amountText, readIn, unitSymbol, withSymbol, withUnit } from './units.ts';

/** A figure as the reader sees it: its number, the symbol of its unit, and both ends of its range. */
export interface FigureParts {
  readonly number: string;
  readonly unit: string;
  readonly low: string;
  readonly high: string;
  /** True when there is no uncertainty: both ends equal the number. */
  readonly isExact: boolean;
}

/**
 * Two digits for minutes below 100 and for a wide range, otherwise three; no trailing zeros on exact values.
 */
export function figureParts({ value, low, high, unit }: Figure, units: ReadingUnits): FigureParts {
  const isRough = unit === 'min' ? value < 100 : high - low > 0.5 * Math.abs(value);
  const digits = isRough ? 2 : 3;
  const read = readIn(value, unit, units);
  const symbol = unitSymbol(read.unit);
  if (low === high) {
    const number = plain(read.value, digits, read.finest);
    return { number, unit: symbol, low: number, high: number, isExact: true };
  }
  const number = significant(read.value, digits, read.finest);
  const [least, most] = ends(readIn(low, unit, units).value, readIn(high, unit, units).value, read.finest);
  return { number, unit: symbol, low: least, high: most, isExact: false };
}

/** "0.42 A (0.36 to 0.48)"; without the brackets when there is no uncertainty. */
export function figureText(figure: Figure, units: ReadingUnits): string {
  const { number, unit, low, high, isExact } = figureParts(figure, units);
  const value = withSymbol(number, unit);
  return isExact ? value : `${value} (${fromTo(low, high)})`;
}

/** In inches: as fine as a ruler beside a tub can show. */
const BOUND_STEP = 0.01;

function boundedText({ value, unit, bound }: Amount, units: ReadingUnits): string {
  const read = readIn(value, unit, units);
  if (bound === undefined || read.unit !== 'in') return amountText(value, unit, units);
  const steps = read.value / BOUND_STEP;
  const safe = bound === 'least' ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9);
  return withUnit(plain(safe * BOUND_STEP), read.unit);
}

/** The word for an id of a plan. The plan may be a stored one from another version. */
export const termText = (id: TermId): string => storedText(terms, id);

function paramText(param: Param, units: ReadingUnits): string {
  if (typeof param === 'string') return termText(param);
  if ('text' in param) return param.text;
  return 'working' in param ? figureText(param, units) : boundedText(param, units);
}

const isKnown = (name: string): name is KnownAmount => Object.hasOwn(knownAmounts, name);

/**
 * A phrase with its blanks filled.
 * @throws RangeError when nothing fills a blank: an error in the app, never one of the maker's
 */
export const phrase = (template: string, params: Params, units: ReadingUnits): string =>
  template.replace(/\{(\w+)\}/g, (_, name: string) => {
    const param = Object.hasOwn(params, name) ? params[name] : undefined;
    if (param === undefined && isKnown(name)) return knownText(name, units);
    if (param === undefined) throw new RangeError(`no value for {${name}} in "${template}"`);
    return paramText(param, units);
  });

export const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The same for a sentence: its first letter is a capital. */
export const fill = (template: string, params: Params, units: ReadingUnits): string =>
  sentenceCase(phrase(template, params, units));
