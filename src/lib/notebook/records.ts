import * as v from 'valibot';
import type { Reading } from '../core/run/run.ts';

/** Shape of a stored job. Raise with a migration in `migrations.ts`, never in place. */
export const jobVersion = 2;

const text = v.string();
const time = v.number();

/** One reading taken at the bench: core's, with a note. */
const reading = v.object({
  at: time,
  volts: v.nullable(v.number()),
  amps: v.nullable(v.number()),
  celsius: v.nullable(v.number()),
  note: text,
}) satisfies v.GenericSchema<Reading & { note: string }>;

/** What the finished piece showed. */
const result = v.object({
  /** mean of its points */
  depthUm: v.nullable(v.number()),
  depthPointsUm: v.optional(v.array(v.number())),
  /** what it was measured with: a gauge, or a witness tab snapped through */
  depthBy: v.optional(text),
  massBeforeG: v.nullable(v.number()),
  massAfterG: v.nullable(v.number()),
  /** judged by eye, by question: id of the answer */
  seen: v.optional(v.record(text, text)),
  note: text,
});

/** A picture of a job; its content is kept apart, under the same id. */
const photo = v.object({
  /** SHA-256 of its content */
  id: text,
  /** masked, stripped or finished */
  shows: text,
  at: time,
});

export const jobRecord = v.object({
  version: v.literal(jobVersion),
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
  photos: v.optional(v.array(photo)),
  /** when the supply went off, by the run's start, where the maker knows better than the clock of the page */
  switchedOff: v.optional(v.record(text, time)),
  /** id of the job that this one started from */
  copyOf: v.optional(text),
});

export type JobRecord = v.InferOutput<typeof jobRecord>;
export type NotedReading = v.InferOutput<typeof reading>;
export type Result = v.InferOutput<typeof result>;
export type Photo = v.InferOutput<typeof photo>;

/** Shape of a stored bath. */
export const bathVersion = 2;

/** mg by element */
const masses = v.record(text, v.number());

/** What happens to a bath. Never changed: a correction is a later event. */
export const bathEvent = v.variant('type', [
  v.object({
    type: v.literal('mixed'),
    at: time,
    /** g of salt as bought, per litre of water */
    strength: v.number(),
    waterMl: v.number(),
    volumeMl: v.number(),
    /** of another's bath: what it held before */
    heldMg: masses,
  }),
  /** what a job put in; a later one of the same job takes its place */
  v.object({ type: v.literal('used'), at: time, job: text, chargeAh: v.number(), tookMg: masses }),
  v.object({ type: v.literal('topped-up'), at: time, waterMl: v.number(), saltG: v.number() }),
  v.object({ type: v.literal('moved'), at: time, to: text }),
  v.object({ type: v.literal('noted'), at: time, text }),
  v.object({ type: v.literal('handed-over'), at: time, to: text }),
  /** back on the shelf, or never gone */
  v.object({ type: v.literal('kept'), at: time }),
]);

export type BathEvent = v.InferOutput<typeof bathEvent>;

/** A bath: mixed once, used for long. What it is now, `bath-ledger.ts` adds up. */
export const bathRecord = v.object({
  version: v.literal(bathVersion),
  id: text,
  /** what its label says, such as "SILVER 1" */
  name: text,
  salt: text,
  water: text,
  metalGroup: text,
  events: v.pipe(v.array(bathEvent), v.minLength(1)),
});

export type BathRecord = v.InferOutput<typeof bathRecord>;

/** Who takes the maker's waste, and what they said. */
const authority = v.object({
  /** name, phone, hours, as typed */
  name: text,
  /** who allowed a bath to be treated, and when; empty when nobody did */
  mayTreat: text,
});

/** Shape of the stored preferences. */
export const preferencesVersion = 1;

/** What is asked once and kept. */
export const preferences = v.object({
  version: v.literal(preferencesVersion),
  use: text,
  country: text,
  paper: text,
  /** m³, as typed */
  room: v.optional(text),
  authority: v.optional(authority),
  /** what is there to work with, by field of a draft, as typed */
  workshop: v.optional(v.record(text, text)),
  /** every supply that is there, by its id in the workshop; each by field of a draft, as typed */
  supplies: v.optional(v.record(text, v.record(text, text))),
  /** first free place on the sheet of labels that goes in again */
  labelPlace: v.optional(v.number()),
  /** of a gram of silver, in the maker's money, as typed */
  silverPrice: v.optional(text),
});

export type Preferences = v.InferOutput<typeof preferences>;

/** A record that could not be read: kept as it is, shown, exportable, never overwritten. */
export interface UnreadableRecord {
  readonly id: string;
  readonly raw: unknown;
  readonly why: string;
}
