import { CELSIUS_ZERO } from './constants.ts';

/**
 * Branded numbers: an SI value with its dimension in its type, so that passing a length where a voltage is
 * wanted does not compile. Arithmetic gives a plain number, so a formula must name the dimension it returns.
 */
declare const dimension: unique symbol;

export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'time'
  | 'temperature'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'charge'
  | 'massConcentration'
  | 'currentDensity'
  | 'conductivity'
  | 'ratio';

export type Quantity<D extends Dimension> = number & { readonly [dimension]: D };

/** m */
export type Length = Quantity<'length'>;
/** m² */
export type Area = Quantity<'area'>;
/** m³ */
export type Volume = Quantity<'volume'>;
/** kg */
export type Mass = Quantity<'mass'>;
/** s */
export type Duration = Quantity<'time'>;
/** K */
export type Temperature = Quantity<'temperature'>;
/** V */
export type Voltage = Quantity<'voltage'>;
/** A */
export type Current = Quantity<'current'>;
/** Ω */
export type Resistance = Quantity<'resistance'>;
/** C */
export type Charge = Quantity<'charge'>;
/** kg/m³, which is g/L */
export type MassConcentration = Quantity<'massConcentration'>;
/** A/m² */
export type CurrentDensity = Quantity<'currentDensity'>;
/** S/m */
export type Conductivity = Quantity<'conductivity'>;
/** dimensionless */
export type Ratio = Quantity<'ratio'>;

/** Gives a plain SI number its dimension. This is the only place where a brand is made. */
export const si = <D extends Dimension>(value: number): Quantity<D> => value as Quantity<D>;

export const celsiusOf = (temperature: Temperature): number => temperature - CELSIUS_ZERO;
