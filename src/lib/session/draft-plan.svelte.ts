import type { Alternative } from '../core/plan/alternatives.ts';
import type { Fault } from '../core/plan/fault.ts';
import type { Influence } from '../core/plan/influence.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { AmmeterGain } from '../core/plan/questions.ts';
import type { Trial, Trying } from '../core/plan/what-if.ts';
import type { JobRecord } from '../notebook/records.ts';
import type { MapReply } from '../work/map-bite.ts';
import { mapBite } from '../work/mapper.ts';
import type { Files } from '../work/plan-draft.ts';
import type { Planner } from '../work/planner.ts';
import type { BenchRates } from './bench-rates.ts';
import type { Draft, FieldId } from './draft.ts';
import { fieldOf, filledDraft, jobFileOf, unchosenIn } from './job-file.ts';
import { benchIn, taughtFor } from './taught.ts';
import type { Taught } from './taught.ts';

interface Parts {
  readonly planner: Planner;
  /** what this bench's other jobs have taught */
  readonly rates: BenchRates;
  readonly draft: () => Draft;
  readonly record: () => JobRecord;
}

/** The plan of a job's draft, worked out beside the page when `settle` is called, and what else may be asked of it. */
export class DraftPlan {
  /** of the latest settled draft, blanks stood in for; good to act on only without faults */
  plan = $state.raw<Plan | null>(null);
  faults = $state.raw<readonly Fault[]>([]);
  /** false while the maker looks at the plan without what the bench has taught */
  usesBench = $state(true);

  readonly #parts: Parts;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  get #files(): Files {
    const draft = this.#parts.draft();
    const bench = benchIn(this.#parts.record(), this.usesBench ? this.taught : null);
    return {
      typed: { ...jobFileOf(draft), ...bench },
      filled: { ...jobFileOf(filledDraft(draft)), ...bench },
    };
  }

  /** What this bench has taught of the job's metal and salt, whether it is planned with or not. */
  get taught(): Taught {
    return taughtFor(this.#parts.rates, this.#parts.draft());
  }

  /**
   * Plans the draft as it stands.
   * @returns false when a later call has overtaken this one: nothing has changed then
   */
  async settle(): Promise<boolean> {
    const unchosen = unchosenIn(this.#parts.draft());
    const planned = await this.#parts.planner.plan(this.#files);
    if (planned === null) return false;
    this.faults = [...unchosen, ...planned.faults];
    this.plan = planned.plan;
    return true;
  }

  /** Faults of some fields, as typed now, one a field. */
  faultsOf(fields: readonly FieldId[]): readonly { readonly field: FieldId; readonly fault: Fault }[] {
    const draft = this.#parts.draft();
    const found = this.faults.flatMap((fault) => {
      const field = fieldOf(fault, draft);
      return field !== null && fields.includes(field) ? [{ field, fault }] : [];
    });
    // a plate as large as the piece repeats the piece's faults
    return found.filter(({ field }, i) => found.findIndex((other) => other.field === field) === i);
  }

  /** Other ways to the same depth; worked out when asked for, as each gap is a cell of its own. */
  alternatives(): Promise<readonly Alternative[]> {
    return this.#parts.planner.alternatives(this.#files);
  }

  /** What an ammeter would change; null where there is one. */
  ammeterGain(): Promise<AmmeterGain | null> {
    return this.#parts.planner.ammeterGain(this.#files);
  }

  influences(): Promise<readonly Influence[]> {
    return this.#parts.planner.influences(this.#files);
  }

  tryValue(trying: Trying): Promise<Trial | null> {
    return this.#parts.planner.tryValue(this.#files, trying);
  }

  /** Where the bite of this draft goes, on a finer grid. @returns calls it off */
  mapBite(tell: (reply: MapReply) => void): () => void {
    return mapBite(this.#files.typed, tell);
  }
}
