import * as v from 'valibot';
import { fromSi, spellingsOf, symbolOf, toSi, unitsOf } from '../units/convert.ts';
import type { UnitSymbol } from '../units/convert.ts';
import type { Dimension, Quantity } from '../units/quantity.ts';

/** Limits of a typed amount, in a unit that a maker would use. */
export interface Bounds {
  readonly min: number;
  readonly max: number;
  readonly unit: UnitSymbol;
  /** the lower limit itself is not allowed */
  readonly above?: boolean;
}

/**
 * An amount in the unit it was typed in. `other` is used when that unit is unknown, or a gauge, which has no
 * conversion back.
 * @param text writes the number
 */
export function inTypedUnit(
  value: Quantity<Dimension>,
  typed: string,
  other: UnitSymbol,
  text: (value: number) => string,
): string {
  const known = symbolOf(typed);
  const unit = known === null || known.startsWith('gauge-') ? other : known;
  return `${text(fromSi(value, unit))} ${unit}`;
}

/** "1 to 1000 mm"; when another unit was typed, the bounds in both units. */
function expectedOf({ min, max, unit, above }: Bounds, dimension: Dimension, typed: string): string {
  const between = (least: number, most: string): string =>
    above ? `more than ${least}, at most ${most}` : `${least} to ${most}`;
  const set = between(min, `${max} ${unit}`);
  const own = symbolOf(typed);
  if (own === null || own === unit || own.startsWith('gauge-')) return set;
  const inOwn = (bound: number): number => Number(fromSi(toSi(bound, unit, dimension), own).toPrecision(4));
  return `${between(inOwn(min), `${inOwn(max)} ${own}`)} (${set})`;
}

/**
 * Schema of `{ "value": n, "unit": "…" }` in any unit of a dimension, giving the SI quantity. Its errors name
 * what was found, and the bounds in the unit typed.
 */
export function amount<D extends Dimension>(dimension: D, bounds: Bounds) {
  const { min, max, unit, above = false } = bounds;
  return v.pipe(
    v.strictObject({
      value: v.pipe(v.number(), v.finite()),
      unit: v.picklist([...unitsOf(dimension), ...spellingsOf(dimension)]),
    }),
    v.rawTransform(({ dataset, addIssue, NEVER }): Quantity<D> => {
      const typed = dataset.value;
      const found = `${typed.value} ${typed.unit}`;
      const quantity = convert(typed.value, typed.unit, dimension);
      if (quantity === null) {
        addIssue({ received: found, expected: `a gauge of that system`, message: 'gauge' });
        return NEVER;
      }
      const inBoundsUnit = fromSi(quantity, unit);
      // a bound typed in another unit must not fail by rounding: allow one part in 10⁹
      const slack = 1e-9 * Math.max(Math.abs(min), Math.abs(max));
      const tooSmall = above ? inBoundsUnit <= min : inBoundsUnit < min - slack;
      if (tooSmall || inBoundsUnit > max + slack) {
        addIssue({
          received: found,
          expected: expectedOf(bounds, dimension, typed.unit),
          message: 'bounds',
        });
        return NEVER;
      }
      return quantity;
    }),
  );
}

/** To SI; null for a gauge number that its system does not have. */
function convert<D extends Dimension>(value: number, unit: string, dimension: D): Quantity<D> | null {
  try {
    return toSi(value, unit, dimension);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
