import * as v from 'valibot';
import { jobFields, sections } from '../job/fields.ts';
import type { JobPath } from '../job/fields.ts';
import { cellLimits } from '../learn/cell-line.ts';
import { paceLimits, rateLimits } from '../learn/rate.ts';

/** The job file as typed, made of the table of its fields: a shape has its own sizes, a control its own limits. */

const { shape: _shape, width, height, diameter, length, ...sheet } = sections.piece;
const piece = v.variant('shape', [
  v.strictObject({ ...sheet, shape: v.literal('rectangle'), width, height }),
  v.strictObject({ ...sheet, shape: v.literal('disc'), diameter }),
  v.strictObject({ ...sheet, shape: v.literal('band'), length, width }),
]);

const { control: _control, volts, maxAmps, amps, maxVolts, ...source } = sections.supply;
const supply = v.variant('control', [
  v.strictObject({ ...source, control: v.literal('volts'), volts, maxAmps }),
  v.strictObject({ ...source, control: v.literal('amps'), amps, maxVolts }),
]);

/** What this bench's own jobs have taught. */
const within = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const atLeastOne = v.pipe(v.number(), v.integer(), v.minValue(1));
const bench = v.strictObject({
  biteRate: v.optional(
    v.strictObject({
      /** of what Faraday's law gives */
      median: within(rateLimits.least, rateLimits.most),
      /** of its logarithm, one standard deviation */
      spread: within(0.001, rateLimits.widest),
      jobs: atLeastOne,
    }),
  ),
  pace: v.optional(
    v.strictObject({
      /** share of the tables' current */
      median: within(paceLimits.least, paceLimits.most),
      spread: within(0.001, rateLimits.widest),
      jobs: atLeastOne,
    }),
  ),
  /** V, and a share of the modelled resistance */
  cell: v.optional(
    v.strictObject({
      pivot: within(0, cellLimits.over),
      over: within(-2 * cellLimits.over, 2 * cellLimits.over),
      overSpread: within(0.001, cellLimits.spread),
      slope: within(...cellLimits.slope),
      slopeSpread: within(0.001, cellLimits.spread),
      points: atLeastOne,
    }),
  ),
});

const fieldPath = v.custom<JobPath>((path) => Object.hasOwn(jobFields, String(path)), 'the path of a field');

export const jobSchema = v.strictObject({
  etchwright: v.literal(1),
  title: jobFields.title.schema,
  piece,
  cathode: v.strictObject(sections.cathode),
  tub: v.strictObject(sections.tub),
  bath: v.strictObject(sections.bath),
  hanger: jobFields.hanger.schema,
  resist: v.strictObject(sections.resist),
  supply,
  /** a file that does not say stands for a bench with a fine scale and a thermometer, as files always have */
  workshop: v.optional(v.strictObject(sections.workshop), {
    has: ['thermometer'],
    scale: { value: 0.1, unit: 'g' },
  }),
  place: v.optional(v.strictObject(sections.place), { use: 'home' }),
  paper: jobFields.paper.schema,
  units: v.optional(v.strictObject(sections.units), {}),
  bench: v.optional(bench),
  /** paths of fields whose value nobody typed */
  untyped: v.optional(v.array(fieldPath), []),
});

/** The job file after its schema, amounts in SI. */
export type TypedJob = v.InferOutput<typeof jobSchema>;
