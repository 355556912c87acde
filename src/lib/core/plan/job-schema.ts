import * as v from 'valibot';
import { rateLimits } from '../learn/rate.ts';
import { cellLimits } from '../learn/cell-line.ts';
import { defaultReadingUnits, lengthUnits, temperatureUnits } from '../job/reading-units.ts';
import { attachments, hangers, uses, waters } from '../cell/setup.ts';
import { atomicWeights } from '../facts/elements.ts';
import { resistKinds, resistNames, supplyKinds } from '../facts/supplies.ts';
import { amount } from './amount.ts';

/** The job file as typed: shapes, units and bounds of every field. */

const length = (min: number, max = 1000) => amount('length', { min, max, unit: 'mm' });
const optional = <S extends v.GenericSchema>(schema: S) => v.optional(schema);
const keys = <T extends object>(table: T) => Object.keys(table) as (keyof T & string)[];

const many = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(120));
/** A design as the field sees it: a letter a cell, 0 to f, row by row from the piece's foot. */
const design = v.pipe(
  v.strictObject({ columns: many, rows: many, cells: v.pipe(v.string(), v.regex(/^[0-9a-f]*$/, '0 to f')) }),
  v.check(
    ({ columns, rows, cells }) => cells.length === columns * rows,
    'a letter for each column of each row',
  ),
  v.check(({ cells }) => /[1-9a-f]/.test(cells), 'some bare metal'),
);

const sheet = {
  metal: v.pipe(v.string(), v.nonEmpty()),
  thickness: length(0.05, 50),
  faces: v.picklist(['front', 'back', 'both']),
  openArea: optional(amount('area', { min: 0, max: 10_000, unit: 'cm2', above: true })),
  openShare: optional(v.pipe(v.number(), v.gtValue(0), v.maxValue(1))),
  depth: length(0.001, 50),
  count: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(100)), 1),
  through: v.optional(v.boolean(), false),
  attached: v.optional(v.array(v.picklist(attachments)), []),
  at: optional(v.strictObject({ y: length(0), z: length(0) })),
  design: optional(design),
};

const piece = v.variant('shape', [
  v.strictObject({ ...sheet, shape: v.literal('rectangle'), width: length(1), height: length(1) }),
  v.strictObject({ ...sheet, shape: v.literal('disc'), diameter: length(1) }),
  v.strictObject({ ...sheet, shape: v.literal('band'), length: length(1), width: length(1) }),
]);

const cathode = v.strictObject({
  metal: v.pipe(v.string(), v.nonEmpty()),
  width: length(1),
  height: length(1),
  gap: length(1),
  sideways: v.optional(length(0), { value: 0, unit: 'mm' }),
  faces: v.optional(v.picklist(['front', 'back', 'both']), 'both'),
});

const tub = v.strictObject({
  length: optional(length(10)),
  width: optional(length(10)),
  diameter: optional(length(10)),
  fill: optional(length(5)),
  waterByJug: optional(amount('volume', { min: 10, max: 1_000_000, unit: 'mL' })),
});

const dissolved = v.strictObject(
  Object.fromEntries(
    keys(atomicWeights).map((element) => [
      element,
      optional(amount('massConcentration', { min: 0, max: 500_000, unit: 'mg/L' })),
    ]),
  ),
);

const bath = v.strictObject({
  salt: v.pipe(v.string(), v.nonEmpty()),
  strength: amount('massConcentration', { min: 0, max: 5000, unit: 'g/L', above: true }),
  water: v.optional(v.picklist(waters), 'deionised'),
  temperature: amount('temperature', { min: -20, max: 100, unit: 'degC' }),
  record: optional(v.pipe(v.string(), v.maxLength(80))),
  dissolved: v.optional(dissolved, {}),
  chargePassed: v.optional(amount('charge', { min: 0, max: 1e6, unit: 'A.h' }), { value: 0, unit: 'A.h' }),
});

const supplyParts = {
  kind: v.optional(v.picklist(keys(supplyKinds)), 'bench'),
  showsAmps: optional(v.boolean()),
  leads: optional(amount('resistance', { min: 0, max: 10, unit: 'ohm' })),
};

const volts = amount('voltage', { min: 0, max: 1000, unit: 'V', above: true });
const amps = amount('current', { min: 0.001, max: 100, unit: 'A' });

const supply = v.variant('control', [
  v.strictObject({ ...supplyParts, control: v.literal('volts'), volts, maxAmps: optional(amps) }),
  v.strictObject({ ...supplyParts, control: v.literal('amps'), amps, maxVolts: volts }),
]);

const place = v.strictObject({
  use: v.picklist(uses),
  room: optional(amount('volume', { min: 1, max: 100_000, unit: 'm3' })),
  country: optional(v.pipe(v.string(), v.regex(/^[A-Z]{2}$/, 'two capital letters, such as NZ'))),
  authorityAllowsTreatment: v.optional(v.boolean(), false),
});

/** What this bench's own jobs have taught. */
const within = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const atLeastOne = v.pipe(v.number(), v.integer(), v.minValue(1));
const bench = v.strictObject({
  biteRate: optional(
    v.strictObject({
      /** of what Faraday's law gives */
      median: within(rateLimits.least, rateLimits.most),
      /** of its logarithm, one standard deviation */
      spread: within(0.001, rateLimits.widest),
      jobs: atLeastOne,
    }),
  ),
  /** V, and a share of the modelled resistance */
  cell: optional(
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

export const papers = ['A4', 'Letter'] as const;

const units = v.strictObject({
  length: v.optional(v.picklist(lengthUnits), defaultReadingUnits.length),
  temperature: v.optional(v.picklist(temperatureUnits), defaultReadingUnits.temperature),
});

export const jobSchema = v.strictObject({
  etchwright: v.literal(1),
  title: v.pipe(v.string(), v.trim(), v.nonEmpty(), v.maxLength(120)),
  piece,
  cathode,
  tub,
  bath,
  hanger: optional(v.picklist(hangers)),
  resist: v.strictObject({ kind: v.picklist([...resistKinds, ...keys(resistNames)]) }),
  supply,
  place: v.optional(place, { use: 'home' }),
  paper: v.optional(v.picklist(papers), 'A4'),
  units: v.optional(units, {}),
  bench: optional(bench),
});

/** The job file after its schema, amounts in SI. */
export type TypedJob = v.InferOutput<typeof jobSchema>;
