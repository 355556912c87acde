import type { UnitId } from './convert.ts';
/** Where a number came from. Anything but these words does not compile. */
export type Evidence =
  | 'measured'
  | 'fitted'
  | 'computed'
  | 'regulatory'
  | 'commonPractice'
  | 'fromMemory'
  | 'yourLog'
  | 'yourInput'
  /** nobody typed it: it stands as a new job has it, or as it was proposed */
  | 'atDefault'
  | 'proposed';

/** One input of a working: a figure computed before it, a datum from the tables, or the maker's own. */
export interface WorkingInput {
  /** id of the input; the words room has its label */
  readonly id: string;
  readonly value: number;
  readonly unit: UnitId;
  readonly evidence: Evidence;
  /** source ids; none for the maker's own input or an earlier figure */
  readonly sources: readonly string[];
}

/** How a figure came about. */
export interface Working {
  /** the formula as an engineer writes it */
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  /** every source the formula and its inputs rest on */
  readonly sources: readonly string[];
  /** ids of remarks, such as a stand-in that a later method replaces */
  readonly remarks: readonly string[];
}

/** A computed value with the ends of its range; low ≤ value ≤ high always. */
export interface Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: UnitId;
  readonly working: Working;
}
