import * as v from 'valibot';
import type { UnitSymbol } from '../units/convert.ts';
import type { Dimension } from '../units/quantity.ts';
import { amount } from './amount.ts';
import type { Bounds } from './amount.ts';

/** What is said of a field beside what it holds. */
export interface FieldMarks {
  /** what a new draft starts with; nothing where it is not said */
  readonly blank?: string;
  /** its id in a draft where that is not its path; null where no draft holds it */
  readonly draft?: string | null;
  /** the draft's field whose answer decides whether this one is asked, and the answers for which it is */
  readonly when?: readonly [field: string, ...answers: string[]];
  /** the draft's field that says the unit it is typed in */
  readonly unitIn?: string;
  /** what stands in while a draft is still blank, mm */
  readonly standIn?: number;
  /** its place in printed codes; fields of which one job has only one share a place */
  readonly code?: number;
  /** in codes, how many of the place's fields follow is written first */
  readonly counted?: true;
  /** why no printed code carries it; without a schema, why only a draft holds it */
  readonly stays?: string;
  /** its maker's own: whoever starts from a sheet has another */
  readonly own?: true;
  /** the picture of a design was laid on it: with another one it is another design */
  readonly drawnOn?: true;
}

/** A field of whatever kind, as what is derived from the table sees it. */
export interface JobField extends FieldMarks {
  readonly kind:
    'text' | 'word' | 'words' | 'flag' | 'count' | 'share' | 'amount' | 'point' | 'metals' | 'json';
  /** in the job file; absent for what only a draft holds */
  readonly schema?: v.GenericSchema;
  readonly optional?: true;
  /** what a job file without it stands for */
  readonly fallback?: unknown;
  readonly of?: readonly string[];
  /** bits of a word in codes */
  readonly bits?: number;
  readonly dimension?: Dimension;
  readonly unit?: UnitSymbol;
  readonly min?: number;
}

export const text = <S extends v.GenericSchema, const M extends FieldMarks>(schema: S, marks: M) => ({
  kind: 'text' as const,
  schema,
  ...marks,
});

export const word = <const L extends readonly string[], const M extends FieldMarks & { bits?: number }>(
  of: L,
  marks: M,
) => ({ kind: 'word' as const, of, schema: v.picklist(of), ...marks });

/** A metal or a salt: the job file takes more names than the list has, and `parseJob` makes them plain. */
export const named = <const L extends readonly string[], const M extends FieldMarks & { bits?: number }>(
  of: L,
  marks: M,
) => ({ kind: 'word' as const, of, schema: v.pipe(v.string(), v.nonEmpty()), ...marks });

export const words = <const L extends readonly string[], const M extends FieldMarks & { bits?: number }>(
  of: L,
  marks: M,
) => ({ kind: 'words' as const, of, schema: v.array(v.picklist(of)), ...marks });

export const flag = <const M extends FieldMarks>(marks: M) => ({
  kind: 'flag' as const,
  schema: v.boolean(),
  ...marks,
});

export const count = <const M extends FieldMarks>(min: number, max: number, marks: M) => ({
  kind: 'count' as const,
  schema: v.pipe(v.number(), v.integer(), v.minValue(min), v.maxValue(max)),
  ...marks,
});

/** More than nothing, at most all: a share of one in the job file, per cent in a draft. */
export const share = <const M extends FieldMarks>(marks: M) => ({
  kind: 'share' as const,
  unit: '%' as const,
  schema: v.pipe(v.number(), v.gtValue(0), v.maxValue(1)),
  ...marks,
});

/** An amount between bounds. */
export const quantity = <D extends Dimension, const B extends Bounds & FieldMarks>(
  dimension: D,
  field: B,
) => ({
  kind: 'amount' as const,
  dimension,
  schema: amount(dimension, field),
  ...field,
});

/** Where a centre lies: across and up, mm. */
export const point = <const M extends FieldMarks>(marks: M) => {
  const one = amount('length', { min: 0, max: 1000, unit: 'mm' });
  return {
    kind: 'point' as const,
    dimension: 'length' as const,
    unit: 'mm' as const,
    schema: v.strictObject({ y: one, z: one }),
    ...marks,
  };
};

/** Metals in the bath, by element; at most fifteen, as many as a printed code holds. */
export const metals = <const L extends readonly string[], const M extends FieldMarks>(of: L, marks: M) => {
  const held = v.optional(amount('massConcentration', { min: 0, max: 500_000, unit: 'mg/L' }));
  const entries = Object.fromEntries(of.map((element) => [element, held])) as Record<L[number], typeof held>;
  return {
    kind: 'metals' as const,
    dimension: 'massConcentration' as const,
    unit: 'mg/L' as const,
    of,
    schema: v.pipe(
      v.strictObject(entries),
      v.check((all) => Object.keys(all).length <= 15, 'at most fifteen metals'),
    ),
    ...marks,
  };
};

export const json = <S extends v.GenericSchema, const M extends FieldMarks>(schema: S, marks: M) => ({
  kind: 'json' as const,
  schema,
  ...marks,
});

/** What only a draft holds. */
export const noted = <const M extends FieldMarks & { stays: string; unit?: UnitSymbol }>(marks: M) => ({
  kind: 'text' as const,
  ...marks,
});

type WithSchema = { readonly schema: v.GenericSchema };

/** May be left out of a job file. */
export const optional = <F extends WithSchema>(field: F) =>
  ({ ...field, schema: v.optional(field.schema), optional: true }) as unknown as Omit<F, 'schema'> & {
    readonly schema: v.OptionalSchema<F['schema'], undefined>;
    readonly optional: true;
  };

/** May be left out of a job file, which then stands for the usual value. */
export const usually = <F extends WithSchema, const V extends v.InferInput<F['schema']>>(
  field: F,
  fallback: V,
) =>
  ({ ...field, schema: v.optional(field.schema, fallback), fallback }) as unknown as Omit<F, 'schema'> & {
    readonly schema: v.OptionalSchema<F['schema'], V>;
    readonly fallback: V;
  };
