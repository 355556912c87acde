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

/** Signal words as ANSI Z535 defines them: will kill or maim, could, minor or moderate, no injury. */
export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

/** An amount in a text; a bound is rounded to its safe side where it is read in another unit. */
export interface Amount {
  readonly value: number;
  readonly unit: UnitId;
  readonly bound?: 'least' | 'most';
}

/** Words that stand as they are: a name that the maker gave, or the code of a country. */
export interface Verbatim {
  readonly text: string;
}

/** What fills a blank in a text: a word by id, words as they are, an amount, or a figure with its range. */
export type Param = TermId | Verbatim | Amount | Figure;
export type Params = Readonly<Record<string, Param>>;

/** What a rule looks at. Figures are there once the plan has been computed. */
export interface Situation extends Setup {
  readonly figures: Readonly<Record<string, Figure>>;
}

interface RuleBase {
  readonly id: string;
  /** the step before which its message stands */
  readonly step: StepId;
  readonly sources: readonly SourceId[];
  /** Null when the rule has nothing to say; else what fills the blanks of its text. */
  readonly applies: (situation: Situation) => Params | null;
}

/** A rule that refuses the job. It is asked before anything is computed. */
export interface RefusalRule extends RuleBase {
  readonly kind: 'block';
}

/** A rule that warns. It is asked with the figures at hand. */
export interface WarningRule extends RuleBase {
  readonly kind: 'watch';
  readonly signal: SignalWord;
}

export type Rule = RefusalRule | WarningRule;
