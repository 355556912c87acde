import type { Dimension, Quantity } from './quantity.ts';
import { gaugeUnits } from './gauge.ts';

interface Unit {
  readonly dimension: Dimension;
  /** SI value of one unit */
  readonly factor: number;
  /** added after multiplying; only temperature scales need it */
  readonly offset?: number;
  /** replaces factor and offset where the scale is not linear, as for gauges */
  readonly toSi?: (value: number) => number;
}

const INCH = 0.0254;
const OUNCE = 0.028349523125;

/** Every unit a maker may type, by the symbol used in files. The inch is 25.4 mm exactly. */
const units = {
  m: { dimension: 'length', factor: 1 },
  cm: { dimension: 'length', factor: 1e-2 },
  mm: { dimension: 'length', factor: 1e-3 },
  um: { dimension: 'length', factor: 1e-6 },
  in: { dimension: 'length', factor: INCH },
  thou: { dimension: 'length', factor: INCH / 1000 },
  m2: { dimension: 'area', factor: 1 },
  dm2: { dimension: 'area', factor: 1e-2 },
  cm2: { dimension: 'area', factor: 1e-4 },
  mm2: { dimension: 'area', factor: 1e-6 },
  in2: { dimension: 'area', factor: INCH * INCH },
  m3: { dimension: 'volume', factor: 1 },
  L: { dimension: 'volume', factor: 1e-3 },
  mL: { dimension: 'volume', factor: 1e-6 },
  cm3: { dimension: 'volume', factor: 1e-6 },
  ft3: { dimension: 'volume', factor: (12 * INCH) ** 3 },
  usfloz: { dimension: 'volume', factor: 29.5735295625e-6 },
  ukfloz: { dimension: 'volume', factor: 28.4130625e-6 },
  kg: { dimension: 'mass', factor: 1 },
  g: { dimension: 'mass', factor: 1e-3 },
  mg: { dimension: 'mass', factor: 1e-6 },
  oz: { dimension: 'mass', factor: OUNCE },
  s: { dimension: 'time', factor: 1 },
  min: { dimension: 'time', factor: 60 },
  h: { dimension: 'time', factor: 3600 },
  K: { dimension: 'temperature', factor: 1 },
  degC: { dimension: 'temperature', factor: 1, offset: 273.15 },
  degF: { dimension: 'temperature', factor: 5 / 9, offset: 273.15 - (32 * 5) / 9 },
  V: { dimension: 'voltage', factor: 1 },
  mV: { dimension: 'voltage', factor: 1e-3 },
  A: { dimension: 'current', factor: 1 },
  mA: { dimension: 'current', factor: 1e-3 },
  ohm: { dimension: 'resistance', factor: 1 },
  mohm: { dimension: 'resistance', factor: 1e-3 },
  C: { dimension: 'charge', factor: 1 },
  'A.h': { dimension: 'charge', factor: 3600 },
  'mA.h': { dimension: 'charge', factor: 3.6 },
  'g/L': { dimension: 'massConcentration', factor: 1 },
  'mg/L': { dimension: 'massConcentration', factor: 1e-3 },
  'kg/m3': { dimension: 'massConcentration', factor: 1 },
  'oz/gal': { dimension: 'massConcentration', factor: OUNCE / 3.785411784e-3 },
  'A/m2': { dimension: 'currentDensity', factor: 1 },
  'A/dm2': { dimension: 'currentDensity', factor: 100 },
  'mA/cm2': { dimension: 'currentDensity', factor: 10 },
  'A/in2': { dimension: 'currentDensity', factor: 1 / (INCH * INCH) },
  'S/m': { dimension: 'conductivity', factor: 1 },
  'mS/cm': { dimension: 'conductivity', factor: 0.1 },
  '1': { dimension: 'ratio', factor: 1 },
  '%': { dimension: 'ratio', factor: 1e-2 },
  ...gaugeUnits,
} as const satisfies Record<string, Unit>;

export type UnitSymbol = keyof typeof units;

/**
 * Every unit that an amount can have: those that may be typed, and those that only tables and figures use.
 */
export type UnitId =
  | UnitSymbol
  | 'atm'
  | 'g/cm3'
  | 'g/mol'
  | 'g/100g water'
  | 'mol/L'
  | 'mol/m3'
  | 'm3/mol'
  | 'L/mol'
  | 'C/mol'
  | 'ppm'
  | 'mg/m3'
  | '%/K'
  | 'K/min'
  | 'degF/min'
  | 'm3/h'
  | 'm2/s'
  | 'A.h/L'
  | 'W/m2K'
  | 'J/kgK'
  | 'ug/cm2/week';

/** Other spellings that people type, each with the symbol used in files. */
const spellings: Readonly<Record<string, UnitSymbol>> = {
  μm: 'um',
  µm: 'um',
  micron: 'um',
  inch: 'in',
  '"': 'in',
  'cm²': 'cm2',
  'mm²': 'mm2',
  'dm²': 'dm2',
  'in²': 'in2',
  'm³': 'm3',
  'cm³': 'cm3',
  l: 'L',
  ml: 'mL',
  '°C': 'degC',
  '°F': 'degF',
  Ω: 'ohm',
  Ah: 'A.h',
  'A·h': 'A.h',
  'g/l': 'g/L',
};

/** The symbol used in files for a unit as typed; null when the unit is unknown. */
export function symbolOf(typed: string): UnitSymbol | null {
  if (Object.hasOwn(units, typed)) return typed as UnitSymbol;
  return (Object.hasOwn(spellings, typed) ? spellings[typed] : undefined) ?? null;
}

/** Symbols of one dimension, in the order of the table. Error messages offer this list. */
export const unitsOf = (dimension: Dimension): UnitSymbol[] =>
  (Object.keys(units) as UnitSymbol[]).filter((symbol) => units[symbol].dimension === dimension);

/** Other spellings accepted for one dimension. */
export const spellingsOf = (dimension: Dimension): string[] =>
  Object.entries(spellings).flatMap(([typed, symbol]) =>
    units[symbol].dimension === dimension ? [typed] : [],
  );

/**
 * Converts a typed amount to SI.
 * @throws RangeError naming the symbol found and the symbols expected, or a gauge that does not exist
 */
export function toSi<D extends Dimension>(value: number, symbol: string, dimension: D): Quantity<D> {
  const known = symbolOf(symbol);
  const unit: Unit | null = known && units[known];
  if (unit?.dimension !== dimension) {
    throw new RangeError(`unit "${symbol}" found, one of ${unitsOf(dimension).join(', ')} expected`);
  }
  const inSi = unit.toSi ? unit.toSi(value) : value * unit.factor + (unit.offset ?? 0);
  return inSi as Quantity<D>;
}

/**
 * Expresses an SI value in a unit. Gauges are refused: they have no conversion back.
 * @throws RangeError when the symbol is a gauge
 */
export function fromSi(value: Quantity<Dimension>, symbol: UnitSymbol): number {
  const unit: Unit = units[symbol];
  if (unit.toSi) throw new RangeError(`unit "${symbol}" found, a unit with a scale expected`);
  return (value - (unit.offset ?? 0)) / unit.factor;
}

/**
 * Converts a value from one unit to another, rounded to twelve digits so that 100 μm gives 0.1 mm, not
 * 0.0999….
 * @throws RangeError when the units measure different things, or `to` is a gauge
 */
export const converted = (value: number, from: UnitSymbol, to: UnitSymbol): number =>
  Number(fromSi(toSi(value, from, units[to].dimension), to).toPrecision(12));
