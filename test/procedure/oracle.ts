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
  /** stops, look-ins and reloads before the answer */
  readonly stops: number;
}

const HALF_HOUR = 1_800_000;

export class Oracle {
  readonly #seen = new Map<string, Seen>();
  #stops = 0;
  basis: CheckBasis;

  constructor(basis: CheckBasis) {
    this.basis = basis;
  }

  /** Takes an event that the machine has taken; `path` is the state it was taken in. */
  take(event: ProcedureEvent, path: string): void {
    const isStopping = path === 'etch.stopping' || path === 'etch.strip-stopping';
    const isPowered = isStopping || path === 'etch.running' || path === 'etch.strip-running';
    if (event.type === 'plan.changed') this.basis = event.basis;
    if (event.type === 'check.answered' && !isPowered) {
      this.#seen.set(event.check, {
        value: event.value,
        at: event.at,
        on: this.basis,
        stops: this.#stops,
      });
    }
    if (event.type === 'job.restored' && !isStopping) this.#stops += 1;
    if (event.type === 'job.restored' && event.isTakenIn === true) this.#seen.clear();
    if (event.type === 'stop.pressed' && path === 'etch.running') this.#stops += 1;
    if (event.type === 'strip.stopped' && path === 'etch.strip-running') this.#stops += 1;
    if (event.type === 'bite.again' && path === 'neutralise.rinsing') {
      this.#stops += 1;
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
    return typeof value === 'number' && value > 0 && value <= this.basis.mostVolts + 0.1;
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
      if (check.critical && seen.stops < this.#stops) return [`${check.id}: not seen since the last stop`];
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
