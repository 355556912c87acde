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

/** A figure as it is read: its number, the unit's sign, and both ends of its range. */
export interface FigureParts {
  readonly number: string;
  readonly unit: string;
  readonly low: string;
  readonly high: string;
  /** nothing is uncertain: both ends are the number */
  readonly isExact: boolean;
}

/** Two digits for minutes and where the range is wide, three where it is narrow; no zeros after what is exact. */
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

/** "0.42 A (0.36 to 0.48)"; without the bracket when nothing is uncertain. */
export function figureText(figure: Figure, units: ReadingUnits): string {
  const { number, unit, low, high, isExact } = figureParts(figure, units);
  const value = withSymbol(number, unit);
  return isExact ? value : `${value} (${fromTo(low, high)})`;
}

/** Hundredths of an inch, as fine as a rule beside a tub tells. */
const BOUND_STEP = 0.01;

function boundedText({ value, unit, bound }: Amount, units: ReadingUnits): string {
  const read = readIn(value, unit, units);
  if (bound === undefined || read.unit !== 'in') return amountText(value, unit, units);
  const steps = read.value / BOUND_STEP;
  const safe = bound === 'least' ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9);
  return withUnit(plain(safe * BOUND_STEP), read.unit);
}

/** The word for an id of a plan, which may be one that was stored with its job. */
export const termText = (id: TermId): string => storedText(terms, id);

function paramText(param: Param, units: ReadingUnits): string {
  if (typeof param === 'string') return termText(param);
  if ('text' in param) return param.text;
  return 'working' in param ? figureText(param, units) : boundedText(param, units);
}

const isKnown = (name: string): name is KnownAmount => Object.hasOwn(knownAmounts, name);

/**
 * A phrase with its blanks filled.
 * @throws RangeError when a blank has nothing to fill it: a fault of ours, never of the maker's
 */
export const phrase = (template: string, params: Params, units: ReadingUnits): string =>
  template.replace(/\{(\w+)\}/g, (_, name: string) => {
    const param = Object.hasOwn(params, name) ? params[name] : undefined;
    if (param === undefined && isKnown(name)) return knownText(name, units);
    if (param === undefined) throw new RangeError(`no value for {${name}} in "${template}"`);
    return paramText(param, units);
  });

export const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A sentence with its blanks filled: the same with a capital. */
export const fill = (template: string, params: Params, units: ReadingUnits): string =>
  sentenceCase(phrase(template, params, units));
