import type { UnitId } from '../../core/units/convert.ts';
import { TRACE } from '../../core/chemistry/alloy.ts';
import { gasState } from '../../core/chemistry/gas.ts';
import { advice } from '../../core/facts/advice.ts';
import { limits, practice, ventilation } from '../../core/facts/limits.ts';
import { ATMOSPHERE } from '../../core/units/constants.ts';
import { celsiusOf, si } from '../../core/units/quantity.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { Amount } from '../../core/rules/rule.ts';
import { plain } from './locale.ts';
import { amountText, readIn, withUnit } from './units.ts';

/** Two ends that are written together: "50 to 100 g/L". */
interface Span {
  readonly low: number;
  readonly high: number;
  readonly unit: UnitId;
}

/**
 * Amounts that texts can name in a blank, such as `{stopTemperature}`. Texts never contain these numbers
 * themselves, so that a changed fact changes every text.
 */
export const knownAmounts = {
  warnTemperature: limits.warnTemperature,
  stopTemperature: limits.stopTemperature,
  planVolts: limits.planVolts,
  refusedVolts: limits.refusedVolts,
  silverStartVolts: practice.silverStartVolts,
  silverWorkVolts: practice.silverWorkVolts,
  adapterVolts: { low: advice.supplyVoltsLeast.value, high: limits.planVolts.value, unit: 'V' },
  smallSupply: { low: advice.smallSupplyLeast.value, high: advice.smallSupplyMost.value, unit: 'A' },
  silverSalt: { value: advice.silverStrength.value, unit: 'g' },
  saltForWater: { value: advice.saltWaterStrength.value, unit: 'g' },
  silverStrengths: {
    low: advice.silverStrengthLeast.value,
    high: advice.silverStrengthMost.value,
    unit: 'g/L',
  },
  lid: ventilation.lid,
  gasTemperature: { value: celsiusOf(si<'temperature'>(gasState.kelvin)), unit: 'degC' },
  gasPressure: { value: gasState.pascal / ATMOSPHERE, unit: 'atm' },
  trace: { value: TRACE, unit: '%' },
  dampOverDry: { low: advice.dampLeast.value, high: advice.dampMost.value, unit: '1' },
  dayOfWork: practice.dayOfWork,
} as const satisfies Record<string, Amount | Span>;

export type KnownAmount = keyof typeof knownAmounts;

/** A known amount as the reader sees it. */
export function knownText(name: KnownAmount, units: ReadingUnits): string {
  const known: Amount | Span = knownAmounts[name];
  if ('value' in known) return amountText(known.value, known.unit, units);
  const [from, to] = [known.low, known.high].map((end) => readIn(end, known.unit, units));
  return withUnit(`${plain(from?.value ?? 0)} to ${plain(to?.value ?? 0)}`, to?.unit ?? known.unit);
}
