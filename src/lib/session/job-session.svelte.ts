import { createActor } from 'xstate';
import type { Actor } from 'xstate';
import type { Fault } from '../core/plan/fault.ts';
import type { Plan } from '../core/plan/plan.ts';
import { stepIds } from '../core/rules/rule.ts';
import type { StepId } from '../core/rules/rule.ts';
import type { Durability, Notebook } from '../notebook/store.ts';
import type { JobRecord, NotedReading, Result } from '../notebook/records.ts';
import { checkBasisOf, noBasis } from '../procedure/check-basis.ts';
import type { ProcedureEvent } from '../procedure/events.ts';
import { procedure, procedureVersion } from '../procedure/machine.ts';
import type { Procedure } from '../procedure/machine.ts';
import type { Planner } from '../work/planner.ts';
import type { BenchRates } from './bench-rates.ts';
import { isResumable } from '../procedure/resume.ts';
import { pathOf } from '../procedure/state-paths.ts';
import type { StateValue } from '../procedure/state-paths.ts';
import { viewOf } from './actor-view.svelte.ts';
import { unlockBellSoon } from './alarm.ts';
import { changed } from './design-follows.ts';
import type { Earlier } from './beside.ts';
import { blankDraft, draftFrom } from './draft.ts';
import { DraftPlan } from './draft-plan.svelte.ts';
import type { Draft, FieldId } from './draft.ts';
import { isBeforePower, strictEvents } from './event-care.ts';
import { ownTitleOf } from './job-title.ts';
import { JobPhotos } from './job-photos.ts';
import { isPreference, keepPreferences } from './preferences.ts';
import { unendedSince } from './run-log.ts';
import type { StopReason } from './run-log.ts';
import { SaveQueue } from './save-queue.ts';
import { WhilePowered } from './while-powered.ts';

/*
 * Screens follow the stored state, not that of the state machine: after Start, the next screen comes when the
 * write has completed. So a page closed at any moment opens again where the maker thought it was, or asks
 * whether the supply is off. The price is some milliseconds for each screen.
 */

interface Parts {
  readonly notebook: Notebook;
  readonly planner: Planner;
  readonly now: () => number;
  /** false in a second tab, which then writes and sends nothing */
  readonly mayWrite: boolean;
  /** the job that this one was copied from; null when it is gone, or never ran */
  readonly earlier: Earlier | null;
  /** the job came from a file and has not been opened here yet */
  readonly isTakenIn: boolean;
  /** what the maker's other jobs show */
  readonly rates: BenchRates;
}

/**
 * One job: keeps its draft, plan, procedure and record together. Screens read `draft`, `plan`, `faults`,
 * `snapshot` and call `set`, `settle`, `send`.
 */
export class JobSession {
  readonly id: string;
  draft = $state.raw<Draft>(draftFrom({}));
  record = $state.raw<JobRecord>() as JobRecord;
  /** why the last write failed, if it did: nothing may start then */
  trouble = $state<string | null>(null);
  /** the state on the disk; screens follow it, so that they never show one that a reload would lose */
  shown = $state.raw<StateValue>('metal');
  readonly mayWrite: boolean;
  readonly earlier: Earlier | null;
  readonly planned: DraftPlan;
  readonly photos: JobPhotos;

  readonly #parts: Parts;
  readonly #actor: Actor<Procedure>;
  readonly #view: ReturnType<typeof viewOf>;
  readonly #minds: { unsubscribe: () => void };
  readonly #powered = new WhilePowered();
  /** when a run began under a procedure whose snapshot cannot be resumed, if it is not known to have ended */
  readonly #poweredSince: number | null;
  readonly #saves: SaveQueue<JobRecord>;

  constructor(record: JobRecord, parts: Parts) {
    this.id = record.id;
    this.#parts = parts;
    this.mayWrite = parts.mayWrite;
    this.earlier = parts.earlier;
    this.record = record;
    this.draft = draftFrom(record.draft);
    this.planned = new DraftPlan({
      planner: parts.planner,
      rates: parts.rates,
      draft: () => this.draft,
      record: () => this.record,
    });
    this.photos = new JobPhotos({
      notebook: parts.notebook,
      now: parts.now,
      named: () => this.record.photos ?? [],
      name: (photos) => {
        this.#keep({ photos }, 'strict');
      },
    });
    this.#saves = new SaveQueue(
      (latest, durability) => parts.notebook.saveJob(latest, durability),
      (trouble) => {
        this.trouble = trouble;
        this.#show();
      },
    );
    const resumes = record.procedureVersion === procedureVersion && isResumable(record.snapshot);
    this.#poweredSince = resumes ? null : unendedSince(record.events);
    this.#actor = createActor(procedure, {
      input: { basis: noBasis },
      ...(resumes ? { snapshot: record.snapshot as never } : {}),
    });
    this.#view = viewOf(this.#actor);
    this.#actor.start();
    this.#show();
    this.#minds = this.#actor.subscribe(() => {
      this.#powered.follow(this.isPowered);
    });
  }

  /** Plans the stored draft, and tells the procedure that the page was away. */
  async open(): Promise<void> {
    const since = this.#poweredSince;
    const isFreshCopy = this.record.copyOf !== undefined && this.record.snapshot === null;
    if (since !== null || this.record.snapshot !== null) {
      this.#tell({
        type: 'job.restored',
        at: this.#parts.now(),
        ...(since === null ? {} : { poweredSince: since }),
        ...(this.#parts.isTakenIn ? { isTakenIn: true } : {}),
      });
    }
    await this.settle();
    if (isFreshCopy) this.#skipToPlan();
    await this.saved();
  }

  /** A copy has all its answers already, so it opens at its plan. Each answer can be changed there. */
  #skipToPlan(): void {
    const at = this.now;
    for (let step = 0; step < stepIds.length && pathOf(this.snapshot.value) !== 'settings.plan'; step += 1)
      this.#tell({ type: 'step.finished', at });
  }

  get snapshot() {
    return this.#view.snapshot;
  }

  get step(): StepId {
    const { value } = this.snapshot;
    return (typeof value === 'string' ? value : Object.keys(value)[0]) as StepId;
  }

  get isPowered(): boolean {
    return this.snapshot.hasTag('powered');
  }

  get now(): number {
    return this.#parts.now();
  }

  /** Stores a changed answer. The plan is computed when `settle` is called. */
  set(field: FieldId, value: string): void {
    if (!this.mayWrite) return;
    const at = this.record.createdAt;
    const isUnnamed = ['', blankDraft.title, ownTitleOf(this.draft, at)].includes(this.draft.title);
    this.draft = changed(this.draft, field, value);
    if (isUnnamed && field.startsWith('piece.'))
      this.draft = { ...this.draft, title: ownTitleOf(this.draft, at) };
    this.#keep({ draft: this.draft }, 'relaxed');
    // a full disk is reported when the job itself is saved
    if (isPreference(field)) void keepPreferences(this.#parts.notebook, this.draft).catch(() => undefined);
    if (this.isPowered) void this.settle();
  }

  /**
   * The plan of the last settled draft, with stand-ins for blank fields; act on it only when there are no
   * faults.
   */
  get plan(): Plan | null {
    return this.planned.plan;
  }

  get faults(): readonly Fault[] {
    return this.planned.faults;
  }

  /** Plans the draft as it is now, and tells the procedure the values that checks depend on. */
  async settle(): Promise<void> {
    if (!(await this.planned.settle())) return;
    const basis = this.plan ? checkBasisOf(this.plan) : noBasis;
    const isWhole = this.faults.length === 0;
    this.#tell({
      type: 'plan.changed',
      basis: isWhole ? basis : { ...basis, mayMix: false, mayPower: false },
    });
  }

  /** Plans with what earlier jobs show, or with the tables alone. */
  async useBench(wanted: boolean): Promise<void> {
    this.planned.usesBench = wanted;
    await this.settle();
  }

  /** Sends an event to the procedure and stores it; some events wait for the disk. */
  send(event: ProcedureEvent): void {
    if (!this.mayWrite) return;
    // this is inside the maker's tap: only now may the bell be allowed to sound later
    if (isBeforePower(event)) unlockBellSoon();
    this.#tell(event);
  }

  /** Stops, and stores why: the next screens depend on the reason. */
  stop(why: StopReason, symptom?: string): void {
    if (!this.mayWrite) return;
    this.#tell(
      { type: 'stop.pressed', at: this.now },
      { why, ...(symptom === undefined ? {} : { symptom }) },
    );
  }

  #tell(event: ProcedureEvent, note: Readonly<Record<string, string>> = {}): void {
    // a refused start must not appear as a run in the record
    const isStart = event.type === 'start.pressed' || event.type === 'strip.started';
    if (isStart && !this.snapshot.can(event)) return;
    this.#view.send(event);
    const started = event.type === 'start.pressed' && this.isPowered;
    this.#keep(
      {
        snapshot: this.#actor.getPersistedSnapshot(),
        procedureVersion,
        ...(event.type === 'plan.changed' ? {} : { events: [...this.record.events, { ...event, ...note }] }),
        ...(started ? { planAtStart: JSON.parse(JSON.stringify(this.plan)) as unknown } : {}),
      },
      strictEvents.has(event.type) ? 'strict' : 'relaxed',
    );
  }

  /** Stores which question is on screen, so that a reload comes back to it. */
  stand(at: string): void {
    if (this.mayWrite && at !== this.record.at) this.#keep({ at }, 'relaxed');
  }

  addReading(reading: Omit<NotedReading, 'at'>): void {
    this.#keep({ readings: [...this.record.readings, { ...reading, at: this.now }] }, 'strict');
  }

  setResult(result: Result): void {
    this.#keep({ result }, 'relaxed');
  }

  /** Stores when the supply of a run went off, as the maker remembers it. */
  tellOff(startedAt: number, at: number): void {
    this.#keep({ switchedOff: { ...this.record.switchedOff, [String(startedAt)]: at } }, 'strict');
  }

  /** Resolves when all changes so far are on the disk. */
  async saved(): Promise<void> {
    await this.#saves.done();
  }

  #keep(change: Partial<JobRecord>, durability: Durability): void {
    if (!this.mayWrite) {
      this.#show();
      return;
    }
    this.record = { ...this.record, ...change, updatedAt: this.now };
    this.#saves.put(this.record, durability);
  }

  #show(): void {
    this.shown = this.#actor.getSnapshot().value;
  }

  close(): void {
    this.#minds.unsubscribe();
    this.#powered.end();
    this.#actor.stop();
    this.#parts.planner.close();
  }
}
