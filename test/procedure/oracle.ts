import { checks } from '../../src/lib/procedure/checks.ts';
import type { Check, HoldId } from '../../src/lib/procedure/checks.ts';
import type { ProcedureEvent } from '../../src/lib/procedure/events.ts';
import type { CheckBasis } from '../../src/lib/procedure/check-basis.ts';

/**
 * An account of the bench kept beside the machine, from the events alone. It knows the table of checks and
 * the rules of the procedure in its own words, and shares no judgement with the machine's guards.
 */
interface Seen {
  readonly value: string | number;
  readonly at: number;
  /** the basis at the moment of the answer */
  readonly on: CheckBasis;
  /** how often the current had been switched off by then */
  readonly stops: number;
  /** how often the work had been left by then */
  readonly pauses: number;
}

const HALF_HOUR = 1_800_000;
const isStoppingAt = (path: string): boolean => path.endsWith('stopping');
const isPoweredAt = (path: string): boolean => /(running|resuming|stopping)$/.test(path);

export class Oracle {
  readonly #seen = new Map<string, Seen>();
  #stops = 0;
  #pauses = 0;
  basis: CheckBasis;

  constructor(basis: CheckBasis) {
    this.basis = basis;
  }

  /** Takes an event that the machine has taken; `path` is the state it was taken in, `after` the one it led to. */
  take(event: ProcedureEvent, path: string, after: string): void {
    if (event.type === 'plan.changed') this.basis = event.basis;
    if (event.type === 'check.answered' && !isPoweredAt(path)) {
      this.#seen.set(event.check, {
        value: event.value,
        at: event.at,
        on: this.basis,
        stops: this.#stops,
        pauses: this.#pauses,
      });
    }
    // whoever comes back after a pause has not looked since; while the supply is being seen to, nothing is asked
    if (event.type === 'job.restored' && !isStoppingAt(path)) this.#pauses += 1;
    if (event.type === 'job.restored' && event.isTakenIn === true) this.#seen.clear();
    // hands have been in the bath between a stop and the next start
    if (isStoppingAt(after) && !isStoppingAt(path)) this.#stops += 1;
    if (event.type === 'bite.again' && path === 'neutralise.rinsing') {
      this.#pauses += 1;
      for (const check of checks) if (check.hold === 'power') this.#seen.delete(check.id);
    }
  }

  #isUnchanged(check: Check, { on }: Seen): boolean {
    const under = (path: string): boolean =>
      check.inputs.some((named) => path === named || path.startsWith(`${named}.`));
    const paths = new Set([...Object.keys(on.inputs), ...Object.keys(this.basis.inputs)].filter(under));
    const same = [...paths].every((path) => on.inputs[path] === this.basis.inputs[path]);
    return same && check.figures.every((id) => on.figures[id] === this.basis.figures[id]);
  }

  #isRight(check: Check, { value }: Seen): boolean {
    if (check.kind === 'initials') return /^[A-Z]{1,4} [A-Z]{1,4}$/.test(String(value)) && value !== 'AB AB';
    if (check.kind === 'choice') return check.options.some(({ id, ok }) => ok && id === value);
    if (typeof value !== 'number' || value <= 0) return false;
    const { mostVolts, mostAmps } = this.basis;
    return check.unit === 'V'
      ? mostVolts > 0 && value <= mostVolts + 0.1
      : mostAmps > 0 && value <= mostAmps + Math.max(0.05, mostAmps / 10);
  }

  #required(hold: HoldId): readonly Check[] {
    return checks.filter(
      (check) => check.hold === hold && (check.when === undefined || check.when(this.basis)),
    );
  }

  /** Why this hold is not clear at this time; empty when it is. */
  blockers(hold: HoldId, at: number): string[] {
    return this.#required(hold).flatMap((check) => {
      const seen = this.#seen.get(check.id);
      if (!seen) return [`${check.id}: never seen`];
      if (!this.#isUnchanged(check, seen)) return [`${check.id}: something under it changed`];
      if (!this.#isRight(check, seen)) return [`${check.id}: ${String(seen.value)} is not right`];
      if (check.critical && seen.pauses < this.#pauses) return [`${check.id}: not seen since the last pause`];
      if (check.changedByStop && seen.stops < this.#stops)
        return [`${check.id}: not seen since the last stop`];
      if (at < seen.at || at - seen.at >= HALF_HOUR) return [`${check.id}: too long ago`];
      return [];
    });
  }

  /** What has changed under a hold that was passed, age and stops aside. */
  broken(hold: HoldId): string[] {
    return this.#required(hold).flatMap((check) => {
      const seen = this.#seen.get(check.id);
      return seen && this.#isUnchanged(check, seen) && this.#isRight(check, seen) ? [] : [check.id];
    });
  }
}
