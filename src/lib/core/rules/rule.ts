import type { UnitId } from '../units/convert.ts';
import type { Setup } from '../cell/setup.ts';
import type { SourceId } from '../facts/sources.ts';
import type { Figure } from '../units/figure.ts';
import type { TermId } from './term.ts';

/** The steps of a job, in order. */
export const stepIds = [
  'metal',
  'electrodes',
  'electrolyte',
  'resist',
  'settings',
  'etch',
  'neutralise',
  'bath',
  'sheet',
] as const;
export type StepId = (typeof stepIds)[number];

/**
 * Signal words as ANSI Z535 defines them: will kill or seriously injure; could; could injure slightly; no
 * injury.
 */
export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

/** An amount in a text. In another unit, a bound is rounded to its safe side. */
export interface Amount {
  readonly value: number;
  readonly unit: UnitId;
  readonly bound?: 'least' | 'most';
}

/** Text that is inserted unchanged: a name given by the maker, or a country code. */
export interface Verbatim {
  readonly text: string;
}

/**
 * What fills a parameter of a text: a word by its id, text as it is, an amount, or a figure with its range.
 */
export type Param = TermId | Verbatim | Amount | Figure;
export type Params = Readonly<Record<string, Param>>;

/** What a rule can look at. Figures exist once the plan has been computed. */
export interface Situation extends Setup {
  readonly figures: Readonly<Record<string, Figure>>;
}

interface RuleBase {
  readonly id: string;
  /** the step before which its message is shown */
  readonly step: StepId;
  readonly sources: readonly SourceId[];
  /** null when the rule does not apply; otherwise the parameters of its text */
  readonly applies: (situation: Situation) => Params | null;
}

/** A rule that refuses the job. It runs before anything is computed. */
export interface RefusalRule extends RuleBase {
  readonly kind: 'block';
}

/** A rule that warns. It runs with the computed figures. */
export interface WarningRule extends RuleBase {
  readonly kind: 'watch';
  readonly signal: SignalWord;
}

export type Rule = RefusalRule | WarningRule;
