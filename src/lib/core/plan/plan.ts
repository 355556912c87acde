import type { DepthMap } from '../field/depth-map.ts';
import type { RefusalId, WarningId } from '../rules/index.ts';
import type { Params, SignalWord, StepId } from '../rules/rule.ts';
import type { Figure } from '../units/figure.ts';
import type { InstructionId } from './instruction-id.ts';
import type { JobInput } from './job-input.ts';
import type { FigureId } from './outcome.ts';

export type Figures = Readonly<Partial<Record<FigureId, Figure>>>;

/** A safety message, standing before its step. */
export interface Caution {
  readonly rule: WarningId;
  readonly step: StepId;
  readonly signal: SignalWord;
  readonly params: Params;
}

/** Why there is no plan; the words room says why and what to do instead. */
export interface Refusal {
  readonly rule: RefusalId;
  readonly step: StepId;
  readonly params: Params;
}

/** One line of work, in order. */
export interface Instruction {
  readonly id: InstructionId;
  readonly step: StepId;
  readonly params: Params;
}

/** The knobs that the plan proposes. */
export type Settings =
  | {
      readonly control: 'amps';
      readonly amps: number;
      /** where the volts knob stands, as a ceiling */
      readonly ceiling: number;
      /** where the volts display will sit */
      readonly display: Figure;
      readonly minutes: Figure;
      /** A·h at which to stop */
      readonly stopCharge: Figure;
      readonly firstLook: Figure;
    }
  | {
      readonly control: 'volts';
      readonly volts: number;
      readonly minutes: Figure;
      readonly firstLook: Figure;
    };

/** A batch in its tub, seen from the plate. Lengths in m. */
export interface Rack {
  readonly width: number;
  readonly fill: number;
  readonly places: readonly {
    /** middle of the piece, across the tub and up from its floor */
    readonly y: number;
    readonly z: number;
    /** A */
    readonly amps: number;
    /** bite over the batch's mean */
    readonly relative: number;
  }[];
}

/** Everything computed for a job; frozen. Screens, papers and records show this and nothing else. */
export interface Plan {
  readonly etchwright: 1;
  readonly dataVersion: string;
  readonly job: JobInput;
  readonly figures: Figures;
  readonly settings: Settings | null;
  /** where the drawing's bare metal is bitten deepest; null without a drawing, or where the cell is not solved */
  readonly map: DepthMap | null;
  /** places of a batch, as they hang; null for one piece, or where the cell is not solved */
  readonly rack: Rack | null;
  readonly cautions: readonly Caution[];
  readonly refusals: readonly Refusal[];
  readonly instructions: readonly Instruction[];
}
