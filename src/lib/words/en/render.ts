import type { Param, Params } from '../../core/rules/rule.ts';
import { plain, range, significant } from '../../core/units/format.ts';
import type { Figure } from '../../core/units/figure.ts';
import { terms } from './terms.ts';
import { withUnit } from './units.ts';

/** Two digits for minutes and where the range is wide, three where it is narrow; no zeros after what is exact. */
export function figureNumber({ value, low, high, unit }: Figure): string {
  const isRough = unit === 'min' ? value < 100 : high - low > 0.5 * Math.abs(value);
  const digits = isRough ? 2 : 3;
  return low === high ? plain(value, digits) : significant(value, digits);
}

/** "0.42 A (0.36 to 0.48)"; without the bracket when nothing is uncertain. */
export function figureText(figure: Figure): string {
  const value = withUnit(figureNumber(figure), figure.unit);
  return figure.low === figure.high ? value : `${value} (${range(figure.low, figure.high)})`;
}

export const amountText = (value: number, unit: string): string => withUnit(plain(value), unit);

/** The word for an id. One that no table knows stands as it is: a salt, say, in a record of another version. */
export const termText = (id: string): string => terms[id] ?? id;

const paramText = (param: Param): string => {
  if (typeof param === 'string') return termText(param);
  return 'working' in param ? figureText(param) : amountText(param.value, param.unit);
};

/**
 * Fills the blanks of a text.
 * @throws RangeError when a blank has nothing to fill it: a fault of ours, never of the maker's
 */
export function fill(template: string, params: Params): string {
  const text = template.replace(/\{(\w+)\}/g, (_, name: string) => {
    const param = params[name];
    if (param === undefined) throw new RangeError(`no value for {${name}} in "${template}"`);
    return paramText(param);
  });
  return text.charAt(0).toUpperCase() + text.slice(1);
}
