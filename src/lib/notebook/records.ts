import * as v from 'valibot';
import type { Reading } from '../core/run/run.ts';

/** Version of a stored job. Change its shape only with a migration in `migrations.ts`. */
export const jobVersion = 2;

const text = v.string();
const time = v.number();

/** One reading of the meters: the core's, with a note. */
const reading = v.object({
  at: time,
  volts: v.nullable(v.number()),
  amps: v.nullable(v.number()),
  celsius: v.nullable(v.number()),
  note: text,
}) satisfies v.GenericSchema<Reading & { note: string }>;

/** Results of the finished piece. */
const result = v.object({
  /** mean of the measured points */
  depthUm: v.nullable(v.number()),
  depthPointsUm: v.optional(v.array(v.number())),
  /** measured by a gauge, or by a witness tab snapped through */
  depthBy: v.optional(text),
  massBeforeG: v.nullable(v.number()),
  massAfterG: v.nullable(v.number()),
  /** answers of judging by eye, by question */
  seen: v.optional(v.record(text, text)),
  note: text,
});

/** A picture of a job. Its content is stored separately, under the same id. */
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
  /** the question on screen when it was taken */
  at: text,
  procedureVersion: v.number(),
  /** snapshot of the procedure, as plain data; it can be made again from the events */
  snapshot: v.nullable(v.unknown()),
  /** every event, in order; these are what counts */
  events: v.array(v.looseObject({ type: text })),
  /** the plan when the current was switched on; never computed again */
  planAtStart: v.nullable(v.unknown()),
  readings: v.array(reading),
  result: v.nullable(result),
  photos: v.optional(v.array(photo)),
  /** when the supply was switched off, by the run's start, where the maker knows it better than the page */
  switchedOff: v.optional(v.record(text, time)),
  /** id of the job that this one was copied from */
  copyOf: v.optional(text),
});

export type JobRecord = v.InferOutput<typeof jobRecord>;
export type NotedReading = v.InferOutput<typeof reading>;
export type Result = v.InferOutput<typeof result>;
export type Photo = v.InferOutput<typeof photo>;

/** Version of a stored bath. */
export const bathVersion = 2;

/** mg by element */
const masses = v.record(text, v.number());

/** What happened to a bath. Events are never changed: a correction is a later event. */
export const bathEvent = v.variant('type', [
  v.object({
    type: v.literal('mixed'),
    at: time,
    /** g of salt as bought, per litre of water */
    strength: v.number(),
    waterMl: v.number(),
    volumeMl: v.number(),
    /** what a bath from elsewhere held before */
    heldMg: masses,
  }),
  /** a job's use; a later event of the same job replaces it */
  v.object({ type: v.literal('used'), at: time, job: text, chargeAh: v.number(), tookMg: masses }),
  v.object({ type: v.literal('topped-up'), at: time, waterMl: v.number(), saltG: v.number() }),
  v.object({ type: v.literal('moved'), at: time, to: text }),
  v.object({ type: v.literal('noted'), at: time, text }),
  v.object({ type: v.literal('handed-over'), at: time, to: text }),
  /** on the shelf, perhaps after being handed over */
  v.object({ type: v.literal('kept'), at: time }),
]);

export type BathEvent = v.InferOutput<typeof bathEvent>;

/** A bath, mixed once and used many times. `bath-ledger.ts` works out its present state. */
export const bathRecord = v.object({
  version: v.literal(bathVersion),
  id: text,
  /** the name on its label, such as "SILVER 1" */
  name: text,
  salt: text,
  water: text,
  metalGroup: text,
  events: v.pipe(v.array(bathEvent), v.minLength(1)),
});

export type BathRecord = v.InferOutput<typeof bathRecord>;

/** Who takes the maker's waste, and what they allowed. */
const authority = v.object({
  /** name, phone and opening hours, as typed */
  name: text,
  /** who allowed a bath to be treated, and when; empty when nobody has */
  mayTreat: text,
});

/** Version of the stored preferences. */
export const preferencesVersion = 1;

/** Answers that are asked once and kept for later jobs. */
export const preferences = v.object({
  version: v.literal(preferencesVersion),
  use: text,
  country: text,
  paper: text,
  /** volume of the room, m³, as typed */
  room: v.optional(text),
  authority: v.optional(authority),
  /** answers about the workshop, by field of a draft, as typed */
  workshop: v.optional(v.record(text, text)),
  /** every supply that is there, by its id in the workshop; each by field of a draft, as typed */
  supplies: v.optional(v.record(text, v.record(text, text))),
  /** first free place on the sheet of labels that goes in again */
  labelPlace: v.optional(v.number()),
  /** price of a gram of silver, in the maker's currency, as typed */
  silverPrice: v.optional(text),
});

export type Preferences = v.InferOutput<typeof preferences>;

/** A record that cannot be read. It is kept unchanged, shown, exported, and never overwritten. */
export interface UnreadableRecord {
  readonly id: string;
  readonly raw: unknown;
  readonly why: string;
}
