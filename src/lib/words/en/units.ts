import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { converted } from '../../core/units/convert.ts';
import type { UnitId, UnitSymbol } from '../../core/units/convert.ts';
import { printedBar } from '../../core/units/printed.ts';
import { plain, range } from './locale.ts';
import { storedText } from './stored-text.ts';

/** How each unit is written for a reader. The type demands an entry for every unit. */
const symbols: Readonly<Record<UnitId, string>> = {
  m: 'm',
  cm: 'cm',
  mm: 'mm',
  um: 'μm',
  in: 'in',
  thou: 'thou',
  m2: 'm²',
  dm2: 'dm²',
  cm2: 'cm²',
  mm2: 'mm²',
  in2: 'in²',
  m3: 'm³',
  L: 'L',
  mL: 'mL',
  cm3: 'cm³',
  ft3: 'ft³',
  usfloz: 'US fl oz',
  ukfloz: 'UK fl oz',
  kg: 'kg',
  g: 'g',
  mg: 'mg',
  oz: 'oz',
  s: 's',
  min: 'min',
  h: 'h',
  K: 'K',
  degC: '°C',
  degF: '°F',
  V: 'V',
  mV: 'mV',
  A: 'A',
  mA: 'mA',
  ohm: 'Ω',
  mohm: 'mΩ',
  C: 'C',
  'A.h': 'A·h',
  'mA.h': 'mA·h',
  'g/L': 'g/L',
  'mg/L': 'mg/L',
  'kg/m3': 'kg/m³',
  'oz/gal': 'oz/US gal',
  'A/m2': 'A/m²',
  'A/dm2': 'A/dm²',
  'mA/cm2': 'mA/cm²',
  'A/in2': 'A/in²',
  'S/m': 'S/m',
  'mS/cm': 'mS/cm',
  '1': '',
  '%': '%',
  'gauge-BS': 'gauge B&S',
  'gauge-SWG': 'gauge SWG',
  'g/cm3': 'g/cm³',
  'g/mol': 'g/mol',
  'g/100g water': 'g/100g water',
  'mol/L': 'mol/L',
  'mol/m3': 'mol/m³',
  'm3/mol': 'm³/mol',
  'L/mol': 'L/mol',
  'C/mol': 'C/mol',
  ppm: 'ppm',
  atm: 'atm',
  'mg/m3': 'mg/m³',
  '%/K': '%/K',
  'K/min': 'K/min',
  'degF/min': '°F/min',
  'm3/h': 'm³/h',
  'm2/s': 'm²/s',
  'A.h/L': 'A·h/L',
  'W/m2K': 'W/(m²·K)',
  'J/kgK': 'J/(kg·K)',
  'ug/cm2/week': 'μg/cm² a week',
};

/** The symbol of a unit from storage: from an answer in a draft, or a figure in a saved plan. */
export const storedSymbol = (unit: string): string => storedText(symbols, unit);

export const unitSymbol = (unit: UnitId): string => storedSymbol(unit);

/** Puts a no-break space between number and unit; a number without a unit gets none. */
export const withSymbol = (number: string, symbol: string): string =>
  symbol === '' ? number : `${number}\u00a0${symbol}`;

export const withUnit = (number: string, unit: UnitId): string => withSymbol(number, unitSymbol(unit));

/** An amount as the reader sees it. `finest` is the least step that can be told apart; 0 for no limit. */
export interface Read {
  readonly value: number;
  readonly unit: UnitId;
  readonly finest: number;
}

/** Inches are shown to a ten-thousandth, as a calliper shows them. */
const FINEST_INCH = 1e-4;
const inches: Readonly<Partial<Record<UnitId, UnitSymbol>>> = {
  um: 'in',
  mm: 'in',
  cm: 'in',
  m: 'in',
  cm2: 'in2',
  m2: 'in2',
  'A/dm2': 'A/in2',
};
/**
 * With cm as the unit of length, lengths below this (mm) stay in mm, as sheet is sold and gauges are marked.
 */
const SHORTEST_IN_CM = 10;
const KELVIN_IN_FAHRENHEIT = 1.8;

/** An amount in the unit that the maker reads. Units that all makers read alike stay as they are. */
export function readIn(value: number, unit: UnitId, { length, temperature }: ReadingUnits): Read {
  const as = (to: UnitSymbol, finest = 0): Read => ({
    value: converted(value, unit as UnitSymbol, to),
    unit: to,
    finest,
  });
  if (unit === 'degC' && temperature === 'degF') return as('degF');
  if (unit === 'K/min' && temperature === 'degF')
    return { value: value * KELVIN_IN_FAHRENHEIT, unit: 'degF/min', finest: 0 };
  if (length === 'in') {
    const to = inches[unit];
    return to === undefined ? { value, unit, finest: 0 } : as(to, to === 'in' ? FINEST_INCH : 0);
  }
  if (unit === 'm') return readIn(converted(value, 'm', 'mm'), 'mm', { length, temperature });
  if (unit === 'm2') return as('cm2');
  if (unit === 'mm' && length === 'cm' && value >= SHORTEST_IN_CM) return as('cm');
  return { value, unit, finest: 0 };
}

/** Symbol of the unit in which an amount is read, for a blank on paper or a field to type in. */
export const symbolRead = (unit: UnitId, units: ReadingUnits): string =>
  unitSymbol(readIn(1, unit, units).unit);

/** Units that are the same for every maker. */
export type FixedUnit =
  | '1'
  | '%'
  | 'A'
  | 'A.h'
  | 'A.h/L'
  | 'g'
  | 'g/L'
  | 'g/cm3'
  | 'h'
  | 'L'
  | 'm3/h'
  | 'mA'
  | 'mg'
  | 'mg/L'
  | 'min'
  | 'mL'
  | 'mol/L'
  | 'ppm'
  | 's'
  | 'V';

/** "30 mm", or "1.181 in" for makers who read inches: four digits, no trailing zeros on exact values. */
export function amountText(value: number, unit: FixedUnit): string;
export function amountText(value: number, unit: UnitId, units: ReadingUnits, digits?: number): string;
export function amountText(value: number, unit: UnitId, units?: ReadingUnits, digits = 4): string {
  if (units === undefined) return withUnit(plain(value), unit);
  const read = readIn(value, unit, units);
  return withUnit(plain(read.value, digits, read.finest), read.unit);
}

/** Length of the printed scale bar. Its ticks are always millimetres, whatever unit the maker reads. */
export const barText = withUnit(plain(printedBar.drawn), 'mm');

/** A number from the tables of facts, such as a limit. */
export const datumText = ({ value, unit }: { readonly value: number; readonly unit: FixedUnit }): string =>
  amountText(value, unit);

/** @param metres of a length */
export const lengthText = (metres: number, units: ReadingUnits, digits?: number): string =>
  amountText(metres, 'm', units, digits);

/**
 * A length beside a drawing, to three digits: enough to check with a ruler.
 * @param metres m
 */
export const rulerText = (metres: number, units: ReadingUnits): string => lengthText(metres, units, 3);

/**
 * No finer than a calliper shows.
 * @param metres m
 */
export const calliperText = (metres: number, units: ReadingUnits): string =>
  lengthText(Math.round(metres * 1e5) / 1e5, units, 3);

/** @param area m² */
export const areaText = (area: number, units: ReadingUnits, digits?: number): string =>
  amountText(area, 'm2', units, digits);

/** @param kelvin temperature, K */
export const temperatureText = (kelvin: number, units: ReadingUnits, digits = 4): string =>
  withUnit(plain(converted(kelvin, 'K', units.temperature), digits), units.temperature);

/**
 * A difference between two temperatures.
 * @param kelvin K
 */
export const degreesText = (kelvin: number, { temperature }: ReadingUnits): string =>
  temperature === 'degF'
    ? withUnit(plain(KELVIN_IN_FAHRENHEIT * kelvin, 2), 'degF')
    : withUnit(plain(kelvin, 2), 'K');

/** "0.08 to 0.12 mm", or "0.0031 to 0.0047 in": one unit for both ends. */
export function amountsText(low: number, high: number, unit: UnitSymbol, units: ReadingUnits): string {
  const to = readIn(high, unit, units);
  const from = converted(low, unit, to.unit as UnitSymbol);
  return withUnit(range(from, to.value, to.finest), to.unit);
}
