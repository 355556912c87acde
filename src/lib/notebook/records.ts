import * as v from 'valibot';

/** Shape of a stored job. Raise with a migration in `migrations.ts`, never in place. */
export const recordVersion = 1;

const text = v.string();
const time = v.number();

/** One reading taken at the bench. */
const reading = v.object({
  at: time,
  volts: v.nullable(v.number()),
  amps: v.nullable(v.number()),
  celsius: v.nullable(v.number()),
  note: text,
});

/** What the finished piece showed. */
const result = v.object({
  depthUm: v.nullable(v.number()),
  massBeforeG: v.nullable(v.number()),
  massAfterG: v.nullable(v.number()),
  note: text,
});

export const jobRecord = v.object({
  version: v.literal(recordVersion),
  id: text,
  createdAt: time,
  updatedAt: time,
  appVersion: text,
  draft: v.record(text, text),
  /** the question the maker stood at */
  at: text,
  procedureVersion: v.number(),
  /** the procedure's snapshot; plain data, a cache of the events */
  snapshot: v.nullable(v.unknown()),
  /** every event, in order: the record proper */
  events: v.array(v.looseObject({ type: text })),
  /** the plan as it stood when the current was switched on, never recalculated */
  planAtStart: v.nullable(v.unknown()),
  readings: v.array(reading),
  result: v.nullable(result),
  /** when the supply went off, by the run's start, where the maker knows better than the clock of the page */
  switchedOff: v.optional(v.record(text, time)),
  /** id of the job that this one started from */
  copyOf: v.optional(text),
});

export type JobRecord = v.InferOutput<typeof jobRecord>;
export type Reading = v.InferOutput<typeof reading>;
export type Result = v.InferOutput<typeof result>;

/** A bath on the shelf: mixed once, used for long. */
export const bathRecord = v.object({
  version: v.literal(recordVersion),
  id: text,
  /** what its label says, such as "SILVER 1" */
  name: text,
  salt: text,
  strength: v.number(),
  water: text,
  madeAt: time,
  lastUsedAt: time,
  chargeAh: v.number(),
  /** mg/L by element */
  dissolved: v.record(text, v.number()),
  metalGroup: text,
  /** mL */
  volumeMl: v.optional(v.number()),
  where: v.picklist(['shelf', 'handed-over']),
});

export type BathRecord = v.InferOutput<typeof bathRecord>;

/** What is asked once and kept. */
export const preferences = v.object({
  version: v.literal(recordVersion),
  use: text,
  country: text,
  paper: text,
  /** m³, as typed */
  room: v.optional(text),
});

export type Preferences = v.InferOutput<typeof preferences>;

/** A record that could not be read: kept as it is, shown, exportable, never overwritten. */
export interface UnreadableRecord {
  readonly id: string;
  readonly raw: unknown;
  readonly why: string;
}
