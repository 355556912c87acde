import type { UnitId } from '../units/convert.ts';
import type { Evidence } from '../units/figure.ts';
import type { SourceId } from './sources.ts';

/** How far a value can be trusted. `notStated`: the source does not say. */
export type Uncertainty =
  | { readonly kind: 'standard'; readonly value: number }
  | { readonly kind: 'relative'; readonly value: number }
  | { readonly kind: 'band'; readonly low: number; readonly high: number }
  | { readonly kind: 'exact' }
  | { readonly kind: 'notStated' };

/** Conditions inside which a value holds: name → [low, high, unit]. */
export type Validity = Readonly<Record<string, readonly [low: number, high: number, unit: string]>>;

/** What every number in the tables carries besides its value. */
export interface Provenance {
  readonly unit: UnitId;
  readonly uncertainty: Uncertainty;
  readonly validFor: Validity;
  readonly evidence: Evidence;
  readonly source: SourceId;
  /** where in the source: a table, row, page, section */
  readonly locator: string;
  readonly note?: string;
}

/** One number with its unit and source. */
export interface Datum extends Provenance {
  readonly value: number;
}

/** A tabulated curve: y at each x, x ascending. Reading it outside the table throws. */
export interface Table extends Provenance {
  readonly xUnit: string;
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** A short text fact (a code, a class, a sentence) with its source. */
export interface Statement {
  readonly text: string;
  readonly evidence: Evidence;
  readonly source: SourceId;
  readonly locator: string;
}
