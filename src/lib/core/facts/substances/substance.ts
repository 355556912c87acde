import type { Backing } from '../first-aid.ts';
import type { ExtraCode, HazardCode } from './statements.ts';

/**
 * One substance and its classification. If the label or data sheet of the bottle differs, it takes
 * precedence.
 */
export interface Substance extends Backing {
  readonly cas: string | null;
  /** index number in CLP Annex VI Table 3 (ATP17, December 2021); null when the law has no entry */
  readonly annexVI: string | null;
  readonly basis: 'harmonised' | 'selfClassified' | 'notClassified';
  /**
   * hazard classes and categories; those for bottled gas are left out, since no gas here comes in a bottle
   */
  readonly classes: readonly string[];
  /** hazard statements of the label */
  readonly hazards: readonly HazardCode[];
  readonly extra?: readonly ExtraCode[];
  readonly signal: 'Danger' | 'Warning' | null;
  /** M-factors of the aquatic classes */
  readonly multiplier?: { readonly acute: number; readonly chronic: number };
  /** mass % from which a statement applies to a mixture, where the law gives one for this substance */
  readonly from?: Readonly<Partial<Record<HazardCode | ExtraCode | 'H361f', number>>>;
  /** acute toxicity estimate by mouth, mg per kg of body weight */
  readonly oralDose?: number;
  readonly note?: string;
}
