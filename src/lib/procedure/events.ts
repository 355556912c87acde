import type { StepId } from '../core/rules/rule.ts';
import type { CheckId } from './checks.ts';
import type { CheckBasis } from './check-basis.ts';

/** What the meter says when the supply is meant to be off. */
export type MeterReading = 'zero' | 'not-zero' | 'not-sure';
/** Judged with the mask still on. */
export type DepthVerdict = 'deeper' | 'enough' | 'not-sure';

/** Everything that can happen, as facts. Times are ms since 1970 and come from outside. */
export type ProcedureEvent =
  | { readonly type: 'plan.changed'; readonly basis: CheckBasis }
  | {
      readonly type: 'check.answered';
      readonly check: CheckId;
      readonly value: string | number;
      readonly at: number;
    }
  | { readonly type: 'step.finished'; readonly at: number }
  | { readonly type: 'step.back' }
  | { readonly type: 'step.chosen'; readonly step: StepId }
  | { readonly type: 'start.pressed'; readonly at: number }
  | { readonly type: 'stop.pressed'; readonly at: number }
  | { readonly type: 'meter.read'; readonly reading: MeterReading; readonly at: number }
  /** after a page was gone during a run: whether current still flows */
  | { readonly type: 'supply.seen'; readonly says: 'on' | 'off' | 'not-sure'; readonly at: number }
  | { readonly type: 'depth.judged'; readonly verdict: DepthVerdict; readonly at: number }
  | { readonly type: 'bite.again'; readonly at: number }
  /** a test strip: asked for, current on, current to go off, all its windows stopped out or given up */
  | { readonly type: 'strip.wanted' }
  | { readonly type: 'strip.started'; readonly at: number }
  | { readonly type: 'strip.stopped'; readonly at: number }
  | { readonly type: 'strip.ended' }
  /**
   * `poweredSince`: its snapshot cannot be read any more, and its events tell of a run that nobody ended;
   * `isTakenIn`: it comes from a file, and nobody has checked anything here
   */
  | {
      readonly type: 'job.restored';
      readonly at: number;
      readonly poweredSince?: number;
      readonly isTakenIn?: boolean;
    };
