import * as v from 'valibot';
import { resistNames } from '../facts/resists.ts';
import {
  areaKinds,
  attachments,
  controls,
  elementIds,
  equipment,
  faces,
  hangers,
  metalIds,
  openings,
  papers,
  resists,
  saltIds,
  shapes,
  supplies,
  tubKinds,
  uses,
  waters,
} from './choices.ts';
import {
  count,
  flag,
  json,
  metals,
  named,
  noted,
  optional,
  point,
  quantity,
  share,
  text,
  usually,
  word,
  words,
} from './field-kinds.ts';
import type { JobField } from './field-kinds.ts';
import { lengthUnits, temperatureUnits } from './reading-units.ts';

const many = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(120));
/**
 * A design as the current distribution needs it: one letter a cell, 0 to f, row by row from the foot of the
 * piece.
 */
const design = v.pipe(
  v.strictObject({ columns: many, rows: many, cells: v.pipe(v.string(), v.regex(/^[0-9a-f]*$/, '0 to f')) }),
  v.check(
    ({ columns, rows, cells }) => cells.length === columns * rows,
    'a letter for each column of each row',
  ),
  v.check(({ cells }) => /[1-9a-f]/.test(cells), 'some bare metal'),
);

const long = { max: 1000, unit: 'mm', unitIn: 'unit.length' } as const;
/** Of volts and amps one is the setting and the other the limit, depending on the supply's control. */
const volts = { min: 0, max: 1000, unit: 'V', above: true, blank: '7', code: 30 } as const;
const amps = { min: 0.001, max: 100, unit: 'A', blank: '3', code: 31 } as const;
/** Sizes that share one place in printed codes. */
const outline = { min: 1, ...long, code: 2, counted: true, drawnOn: true } as const;
const tubSize = { min: 10, ...long, code: 20, counted: true } as const;
const onShelf = ['bath.from', 'shelf'] as const;

const mine = { own: true, stays: 'a sheet goes from hand to hand, and this is its maker’s alone' } as const;
const reading = { own: true, stays: 'whoever holds the sheet reads amounts their own way' } as const;

/**
 * Every field of a job, once, by its path in the job file. Schema, draft, job file, printed code and names
 * are made from this table. It has the order of the job file, and a field comes after those that decide
 * whether it is asked.
 */
export const jobFields = {
  title: text(v.pipe(v.string(), v.trim(), v.nonEmpty(), v.maxLength(120)), {
    blank: 'My piece',
    ...mine,
  }),

  'piece.metal': named(metalIds, { blank: 'sterling-925', code: 0, bits: 6 }),
  'piece.shape': word(shapes, { blank: 'rectangle', code: 1, bits: 2, drawnOn: true }),
  'piece.length': quantity('length', { ...outline, when: ['piece.shape', 'band'], standIn: 60 }),
  'piece.width': quantity('length', { ...outline, when: ['piece.shape', 'rectangle', 'band'], standIn: 30 }),
  'piece.height': quantity('length', { ...outline, when: ['piece.shape', 'rectangle'], standIn: 40 }),
  'piece.diameter': quantity('length', { ...outline, when: ['piece.shape', 'disc'], standIn: 30 }),
  'piece.thickness': quantity('length', {
    min: 0.05,
    max: 50,
    unit: 'mm',
    unitIn: 'piece.thickness.unit',
    code: 3,
    standIn: 1,
  }),
  'piece.thickness.unit': noted({ blank: 'mm', stays: 'the thickness travels, also that of a gauge' }),
  'piece.faces': word(faces, { blank: 'front', code: 4, bits: 2 }),
  'piece.purpose': noted({ blank: 'patina', stays: 'it stands for a depth, which travels' }),
  'piece.depth': quantity('length', {
    min: 0.001,
    max: 50,
    unit: 'mm',
    unitIn: 'piece.depth.unit',
    blank: '0.1',
    code: 7,
  }),
  'piece.depth.unit': noted({ blank: 'mm', stays: 'the depth travels, however it was typed' }),
  'piece.polish': noted({ blank: '0', unit: 'mm', stays: 'it is part of the depth that travels' }),
  'piece.area': { kind: 'word', of: areaKinds, blank: 'later', code: 5, bits: 2 },
  'piece.openArea': optional(
    quantity('area', {
      min: 0,
      max: 10_000,
      unit: 'cm2',
      unitIn: 'piece.openArea.unit',
      above: true,
      when: ['piece.area', 'area'],
      code: 6,
    }),
  ),
  'piece.openArea.unit': noted({ blank: 'cm2', stays: 'the area travels, however it was typed' }),
  'piece.openShare': optional(share({ when: ['piece.area', 'share'], code: 6 })),
  /** JSON: where the bare parts are, taken from a drawing */
  'piece.design': optional(
    json(design, {
      when: ['piece.area', 'area'],
      stays: 'a drawing has more letters than a printed code can hold; its area travels',
    }),
  ),
  'piece.count': usually(count(1, 100, { blank: '1', code: 8 }), 1),
  'piece.through': usually(flag({ blank: 'no', code: 9 }), false),
  /** a draft may also hold oldsolder and plating, which turn the metal into a refused one */
  'piece.attached': usually(words(attachments, { code: 10, bits: 4 }), []),
  'piece.at': optional(point({ code: 12 })),

  'cathode.metal': named(metalIds, { blank: 'same', code: 13, bits: 6 }),
  'cathode.size': noted({ blank: 'same', stays: 'it stands for width and height, which travel' }),
  'cathode.width': quantity('length', {
    min: 1,
    ...long,
    when: ['cathode.size', 'own'],
    code: 14,
    standIn: 30,
  }),
  'cathode.height': quantity('length', {
    min: 1,
    ...long,
    when: ['cathode.size', 'own'],
    code: 15,
    standIn: 40,
  }),
  'cathode.gap': quantity('length', { min: 1, ...long, blank: '30', code: 16 }),
  'cathode.sideways': usually(quantity('length', { min: 0, max: 1000, unit: 'mm', blank: '0', code: 17 }), {
    value: 0,
    unit: 'mm',
  }),
  'cathode.faces': usually(word(faces, { blank: 'both', code: 18, bits: 2 }), 'both'),

  'tub.kind': { kind: 'word', of: tubKinds, blank: 'box', code: 19, bits: 2 },
  'tub.length': optional(quantity('length', { ...tubSize, when: ['tub.kind', 'box'] })),
  'tub.width': optional(quantity('length', { ...tubSize, when: ['tub.kind', 'box'] })),
  'tub.diameter': optional(quantity('length', { ...tubSize, when: ['tub.kind', 'round'] })),
  'tub.fill': optional(quantity('length', { ...tubSize, min: 5, when: ['tub.kind', 'box', 'round'] })),
  'tub.waterByJug': optional(
    quantity('volume', {
      min: 10,
      max: 1_000_000,
      unit: 'mL',
      code: 20,
      counted: true,
      when: ['tub.kind', 'jug'],
    }),
  ),

  'bath.from': noted({
    blank: 'new',
    stays: 'a bath that held metal or passed charge is one from the shelf',
  }),
  'bath.salt': named(saltIds, { blank: 'NaNO3', code: 21, bits: 6 }),
  'bath.strength': quantity('massConcentration', {
    min: 0,
    max: 5000,
    unit: 'g/L',
    above: true,
    blank: '60',
    code: 22,
  }),
  'bath.water': usually(word(waters, { blank: 'deionised', code: 23, bits: 3 }), 'deionised'),
  'bath.temperature': quantity('temperature', {
    min: -20,
    max: 100,
    unit: 'degC',
    unitIn: 'unit.temperature',
    blank: '20',
    code: 24,
  }),
  'bath.record': optional(
    text(v.pipe(v.string(), v.maxLength(80)), {
      when: onShelf,
      stays: 'a bath’s name is known only on its own shelf',
    }),
  ),
  /** JSON: what a bath from the shelf already holds, mg/L by element */
  'bath.dissolved': usually(metals(elementIds, { when: onShelf, code: 25 }), {}),
  /** charge passed through the bath before this job */
  'bath.chargePassed': usually(
    quantity('charge', { min: 0, max: 1e6, unit: 'A.h', when: onShelf, code: 26 }),
    { value: 0, unit: 'A.h' },
  ),
  'bath.for': noted({
    stays: 'which metal the recipe was proposed for; a recipe that travels is its maker’s',
  }),
  'bath.mixedAt': noted({ stays: 'what is mixed is mixed for one job' }),

  /** whether the workshop has been told: what gives the current, where, and what it weighs with */
  'workshop.known': noted({ own: true, stays: 'a workshop is its maker’s own' }),
  /** which of its supplies the job takes */
  'workshop.supply': optional(
    text(v.pipe(v.string(), v.maxLength(20)), { own: true, stays: 'a workshop is its maker’s own' }),
  ),
  'workshop.has': usually(
    words(equipment, {
      // jobs begun before it was asked were told to read one
      blank: 'thermometer',
      own: true,
      stays: 'a workshop is its maker’s own',
    }),
    [],
  ),
  /** smallest step of the scale; none where nothing is weighed */
  'workshop.scale': optional(
    quantity('mass', {
      min: 0.0001,
      max: 1000,
      unit: 'g',
      blank: '1',
      draft: 'scale',
      own: true,
      stays: 'what a bench weighs with is its maker’s own',
    }),
  ),
  hanger: optional(word(hangers, { blank: 'wire', code: 11, bits: 4 })),
  'resist.kind': {
    ...word(resists, { blank: 'nail-varnish', code: 27, bits: 5 }),
    schema: v.picklist([...resists, ...Object.keys(resistNames)]),
  },
  'resist.paintedAt': noted({ stays: 'what is painted is painted for one piece' }),
  /** JSON: the result of a test strip */
  strip: noted({ stays: 'what a strip told is in the bite rate that it taught' }),

  'supply.kind': usually(word(supplies, { blank: 'bench', code: 28, bits: 5 }), 'bench'),
  'supply.control': word(controls, { blank: 'volts', code: 29, bits: 2 }),
  'supply.volts': quantity('voltage', { ...volts, when: ['supply.control', 'volts'] }),
  'supply.maxVolts': quantity('voltage', {
    ...volts,
    draft: 'supply.volts',
    when: ['supply.control', 'amps'],
  }),
  'supply.maxAmps': optional(quantity('current', { ...amps, when: ['supply.control', 'volts'] })),
  'supply.amps': quantity('current', { ...amps, draft: 'supply.maxAmps', when: ['supply.control', 'amps'] }),
  'supply.showsAmps': optional(flag({ blank: 'yes', draft: 'supply.amps', code: 32 })),
  'supply.leads': optional(quantity('resistance', { min: 0, max: 10, unit: 'ohm', code: 33 })),

  'place.use': word(uses, { blank: 'home', ...mine }),
  'place.country': optional(
    text(v.pipe(v.string(), v.regex(/^[A-Z]{2}$/, 'two capital letters, such as NZ')), { ...mine }),
  ),
  'place.room': optional(quantity('volume', { min: 1, max: 100_000, unit: 'm3', blank: '20', ...mine })),
  'place.openings': optional(word(openings, { ...mine })),
  'place.authorityAllowsTreatment': usually(
    flag({
      draft: null,
      stays: 'an authority’s word holds for one place and bath: nothing handed over grants it',
    }),
    false,
  ),

  paper: usually(word(papers, { blank: 'A4', ...mine }), 'A4'),
  'units.length': usually(word(lengthUnits, { blank: 'mm', draft: 'unit.length', ...reading }), 'mm'),
  'units.temperature': usually(
    word(temperatureUnits, { blank: 'degC', draft: 'unit.temperature', ...reading }),
    'degC',
  ),
} as const satisfies Readonly<Record<string, JobField>>;

type Fields = typeof jobFields;

/** A field's path in the job file; for a field that only drafts hold, its id in a draft. */
export type JobPath = keyof Fields;
/** A field's id in a draft. */
export type FieldId = {
  [P in JobPath]: Fields[P] extends { draft: infer D } ? Extract<D, string> : P;
}[JobPath];

/** The rows of the table, in order. */
export const fieldRows = Object.entries(jobFields) as readonly (readonly [JobPath, JobField])[];

/** The id in a draft of a row; null where no draft holds it. */
export const fieldIdOf = (path: JobPath): FieldId | null => {
  const { draft }: JobField = jobFields[path];
  return draft === undefined ? (path as FieldId) : (draft as FieldId | null);
};

const pathsByField = new Map(fieldRows.map(([path]) => [fieldIdOf(path), path] as const).reverse());

/** The path of the row that a draft's field belongs to; where two rows share the field, the first. */
export const pathOfField = (field: FieldId): JobPath => pathsByField.get(field) as JobPath;

/** The value at a dotted path in nested objects; undefined where there is none. */
export const valueAt = (tree: unknown, path: string): unknown =>
  path
    .split('.')
    .reduce((at, name) => (typeof at === 'object' && at !== null ? (at as Tree)[name] : undefined), tree);
type Tree = Readonly<Record<string, unknown>>;

type SectionOf<P> = P extends `${infer S}.${string}` ? S : never;
/** A part of the job file that holds several fields. */
export type JobSection = SectionOf<JobPath>;

type InFile = { [P in JobPath]: Fields[P] extends { schema: unknown } ? P : never }[JobPath];
type NameIn<S extends JobSection, P> = P extends `${S}.${infer Name}` ? Name : never;

/** Schemas of the job file's sections, by section and field name. */
export const sections = fieldRows.reduce<Record<string, Record<string, unknown>>>(
  (all, [path, { schema }]) => {
    const [section, name] = path.split('.') as [string, string?];
    if (schema && name !== undefined) (all[section] ??= {})[name] = schema;
    return all;
  },
  {},
) as unknown as {
  readonly [S in JobSection]: { readonly [P in InFile as NameIn<S, P>]: Fields[P]['schema'] };
};
