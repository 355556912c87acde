import { createActor } from 'xstate';
import type { Actor } from 'xstate';
import type { Fault } from '../core/plan/fault.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { StepId } from '../core/rules/rule.ts';
import type { Durability, Notebook } from '../notebook/store.ts';
import type { StoredPhoto } from '../notebook/photo-store.ts';
import type { JobRecord, NotedReading, Photo, Result } from '../notebook/records.ts';
import { checkNamed } from '../procedure/checks.ts';
import { checkBasisOf, noBasis } from '../procedure/check-basis.ts';
import type { ProcedureEvent } from '../procedure/events.ts';
import { procedure, procedureVersion } from '../procedure/machine.ts';
import type { Procedure } from '../procedure/machine.ts';
import type { Trial, Trying } from '../core/plan/what-if.ts';
import type { Influence } from '../core/plan/influence.ts';
import type { Alternative } from '../core/plan/alternatives.ts';
import type { Files } from '../work/plan-draft.ts';
import { mapBite } from '../work/mapper.ts';
import type { MapReply } from '../work/map-bite.ts';
import type { Planner } from '../work/planner.ts';
import type { BenchRates } from './bench-rates.ts';
import { isResumable } from '../procedure/resume.ts';
import type { StateValue } from '../procedure/state-paths.ts';
import { benchIn, taughtFor } from './taught.ts';
import type { Taught } from './taught.ts';
import { viewOf } from './actor-view.svelte.ts';
import { restBell, unlockBellSoon } from './alarm.ts';
import { changed } from './design-follows.ts';
import type { Earlier } from './beside.ts';
import { draftFrom } from './draft.ts';
import type { Draft, FieldId } from './draft.ts';
import { fieldOf, filledDraft, jobFileOf } from './job-file.ts';
import { isPreference, keepPreferences } from './preferences.ts';
import { unendedSince } from './run-log.ts';
import type { StopReason } from './run-log.ts';
import { holdUpdates } from './updates.ts';

/*
 * A screen follows the stored state, not the machine's: after Start the bite's screen comes when the write
 * has completed, so that a page killed at any moment opens where the maker thought it was, or asks whether
 * the supply is off. Price: some milliseconds a screen.
 */

/** Events after which the record must be on the disk before anything else happens. */
const strictEvents = new Set<ProcedureEvent['type']>([
  'start.pressed',
  'stop.pressed',
  'strip.started',
  'strip.stopped',
  'meter.read',
  'check.answered',
  'depth.judged',
  'job.restored',
]);

/** A look before power, or Start itself. */
const isBeforePower = (event: ProcedureEvent): boolean =>
  event.type === 'start.pressed' ||
  event.type === 'strip.started' ||
  (event.type === 'check.answered' && checkNamed(event.check).hold === 'power');

interface Parts {
  readonly notebook: Notebook;
  readonly planner: Planner;
  readonly now: () => number;
  /** false in a second tab: nothing is written or sent */
  readonly mayWrite: boolean;
  /** the job that this one started from; null when it is gone, or never ran */
  readonly earlier: Earlier | null;
  /** a file brought it, and nobody has opened it here yet */
  readonly isTakenIn: boolean;
  /** what this bench's other jobs have taught */
  readonly rates: BenchRates;
}

/**
 * One job at the bench: the draft, its plan, the procedure and the record, kept in step. Screens read
 * `draft`, `plan`, `faults`, `snapshot` and call `set`, `settle`, `send`.
 */
export class JobSession {
  readonly id: string;
  draft = $state.raw<Draft>(draftFrom({}));
  /** the plan of the latest settled draft, blanks stood in for; good to act on only without faults */
  plan = $state.raw<Plan | null>(null);
  faults = $state.raw<readonly Fault[]>([]);
  record = $state.raw<JobRecord>() as JobRecord;
  /** set when the last write failed: nothing may start then */
  trouble = $state<string | null>(null);
  saving = $state(false);
  /** false while the maker looks at the plan without what the bench has taught */
  usesBench = $state(true);
  /** the state that is on the disk: screens follow it, so that none is seen that a reload would lose */
  shown = $state.raw<StateValue>('metal');
  readonly mayWrite: boolean;
  readonly earlier: Earlier | null;

  readonly #parts: Parts;
  readonly #actor: Actor<Procedure>;
  readonly #view: ReturnType<typeof viewOf>;
  readonly #minds: { unsubscribe: () => void };
  /** lets the bench go; null while nothing is powered */
  #letGo: (() => void) | null = null;
  /** begun under a procedure whose snapshot cannot be resumed, and not known to have ended */
  readonly #poweredSince: number | null;
  #planned: Promise<void> = Promise.resolve();
  #writes: Promise<void> = Promise.resolve();
  #durability: Durability = 'relaxed';

  constructor(record: JobRecord, parts: Parts) {
    this.id = record.id;
    this.#parts = parts;
    this.mayWrite = parts.mayWrite;
    this.earlier = parts.earlier;
    this.record = record;
    this.draft = draftFrom(record.draft);
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
      this.#mindBench();
    });
  }

  /** Plans the stored draft and tells the procedure that it was away. */
  async open(): Promise<void> {
    const since = this.#poweredSince;
    if (since !== null || this.record.snapshot !== null) {
      this.#tell({
        type: 'job.restored',
        at: this.#parts.now(),
        ...(since === null ? {} : { poweredSince: since }),
        ...(this.#parts.isTakenIn ? { isTakenIn: true } : {}),
      });
    }
    await this.settle();
    await this.saved();
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

  /** Takes a keystroke or a choice. The plan follows when `settle` is called. */
  set(field: FieldId, value: string): void {
    if (!this.mayWrite) return;
    this.draft = changed(this.draft, field, value);
    this.#keep({ draft: this.draft }, 'relaxed');
    // a disk that is full says so with the job itself
    if (isPreference(field)) void keepPreferences(this.#parts.notebook, this.draft).catch(() => undefined);
    if (this.isPowered) void this.settle();
  }

  /** Plans the draft as it stands and hands the basis to the procedure. */
  async settle(): Promise<void> {
    this.#planned = this.#plan();
    await this.#planned;
  }

  get #files(): Files {
    const bench = benchIn(this.record, this.usesBench ? this.taught : null);
    return {
      typed: { ...jobFileOf(this.draft), ...bench },
      filled: { ...jobFileOf(filledDraft(this.draft)), ...bench },
    };
  }

  /** What this bench has taught of the job's metal and salt, whether it is planned with or not. */
  get taught(): Taught {
    return taughtFor(this.#parts.rates, this.draft);
  }

  /** Plans with what the bench has taught, or with the tables alone. */
  async useBench(wanted: boolean): Promise<void> {
    this.usesBench = wanted;
    await this.settle();
  }

  /** Other ways to the same depth; worked out when asked for, as each gap is a cell of its own. */
  alternatives(): Promise<readonly Alternative[]> {
    return this.#parts.planner.alternatives(this.#files);
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

  async #plan(): Promise<void> {
    const planned = await this.#parts.planner.plan(this.#files);
    if (planned === null) return;
    this.faults = planned.faults;
    this.plan = planned.plan;
    const basis = planned.plan ? checkBasisOf(planned.plan) : noBasis;
    const isWhole = planned.faults.length === 0;
    this.#tell({
      type: 'plan.changed',
      basis: isWhole ? basis : { ...basis, mayMix: false, mayPower: false },
    });
  }

  /** Faults of some fields, as typed now, one a field. */
  faultsOf(fields: readonly FieldId[]): readonly { readonly field: FieldId; readonly fault: Fault }[] {
    const found = this.faults.flatMap((fault) => {
      const field = fieldOf(fault, this.draft);
      return field !== null && fields.includes(field) ? [{ field, fault }] : [];
    });
    // a plate as large as the piece repeats the piece's faults
    return found.filter(({ field }, i) => found.findIndex((other) => other.field === field) === i);
  }

  /** Sends a fact to the procedure and writes it down; the grave ones strictly. */
  send(event: ProcedureEvent): void {
    if (!this.mayWrite) return;
    // inside the tap: the bell may then sound when the time is up
    if (isBeforePower(event)) unlockBellSoon();
    this.#tell(event);
  }

  /** Stops, and writes down why: the screens that follow go on from there. */
  stop(why: StopReason, symptom?: string): void {
    if (!this.mayWrite) return;
    this.#tell(
      { type: 'stop.pressed', at: this.now },
      { why, ...(symptom === undefined ? {} : { symptom }) },
    );
  }

  #tell(event: ProcedureEvent, note: Readonly<Record<string, string>> = {}): void {
    // a start that was refused never was: the record must not tell of a run
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

  /** Remembers the question on screen, so that a reload comes back to it. */
  stand(at: string): void {
    if (this.mayWrite && at !== this.record.at) this.#keep({ at }, 'relaxed');
  }

  addReading(reading: Omit<NotedReading, 'at'>): void {
    this.#keep({ readings: [...this.record.readings, { ...reading, at: this.now }] }, 'strict');
  }

  setResult(result: Result): void {
    this.#keep({ result }, 'relaxed');
  }

  /** Keeps a picture in a store of its own; only then does the record name it. */
  async addPhoto(photo: StoredPhoto, shows: string): Promise<void> {
    await this.#parts.notebook.savePhoto(photo);
    const others = (this.record.photos ?? []).filter(({ id }) => id !== photo.id);
    this.setPhotos([...others, { id: photo.id, shows, at: this.now }]);
  }

  /** What is no longer named is kept until the notebook is next put in order, so that it can come back. */
  setPhotos(photos: readonly Photo[]): void {
    this.#keep({ photos: [...photos] }, 'strict');
  }

  photo(id: string): Promise<StoredPhoto | null> {
    return this.#parts.notebook.photo(id);
  }

  /** The maker knows when the supply of a run went off. */
  tellOff(startedAt: number, at: number): void {
    this.#keep({ switchedOff: { ...this.record.switchedOff, [String(startedAt)]: at } }, 'strict');
  }

  /** Resolves when everything so far is on the disk. */
  async saved(): Promise<void> {
    await this.#writes;
  }

  #keep(change: Partial<JobRecord>, durability: Durability): void {
    if (!this.mayWrite) {
      this.#show();
      return;
    }
    this.record = { ...this.record, ...change, updatedAt: this.now };
    this.#durability = this.#durability === 'strict' ? 'strict' : durability;
    if (this.saving) return;
    this.saving = true;
    this.#writes = this.#write();
  }

  /** Writes the latest record until nothing newer is left; what came in meanwhile goes in one write. */
  async #write(): Promise<void> {
    let written: JobRecord | null = null;
    while (written !== this.record) {
      written = this.record;
      const durability = this.#durability;
      this.#durability = 'relaxed';
      try {
        await this.#parts.notebook.saveJob(written, durability);
        this.trouble = null;
      } catch (error) {
        this.trouble = error instanceof Error ? error.message : String(error);
      }
    }
    this.saving = false;
    this.#show();
  }

  #show(): void {
    this.shown = this.#actor.getSnapshot().value;
  }

  /** While current may flow no new version of the app is let in. */
  #mindBench(): void {
    if (this.isPowered) this.#letGo ??= holdUpdates();
    else this.#release();
  }

  #release(): void {
    if (this.#letGo === null) return;
    this.#letGo();
    this.#letGo = null;
    restBell();
  }

  close(): void {
    this.#minds.unsubscribe();
    this.#release();
    this.#actor.stop();
    this.#parts.planner.close();
  }
}
