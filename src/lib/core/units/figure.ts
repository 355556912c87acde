import type { UnitId } from './convert.ts';
/** Where a number came from. */
export type Evidence =
  | 'measured'
  | 'fitted'
  | 'computed'
  | 'regulatory'
  | 'commonPractice'
  | 'fromMemory'
  | 'yourLog'
  | 'yourInput'
  /** nobody typed it: the default of a new job; `proposed`: the app proposed it */
  | 'atDefault'
  | 'proposed';

/** One input of a working: a figure computed before it, a datum from the tables, or the maker's own. */
export interface WorkingInput {
  /** id of the input; its label is in the words room */
  readonly id: string;
  readonly value: number;
  readonly unit: UnitId;
  readonly evidence: Evidence;
  /** source ids; empty for the maker's own input and for an earlier figure */
  readonly sources: readonly string[];
}

/** How a figure was computed. */
export interface Working {
  /** the formula as an engineer writes it */
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  /** ids of every source behind the formula and its inputs */
  readonly sources: readonly string[];
  /** ids of remarks, for example that an estimate stands in for a better method */
  readonly remarks: readonly string[];
}

/** A computed value and its range; always low ≤ value ≤ high. */
export interface Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: UnitId;
  readonly working: Working;
}
