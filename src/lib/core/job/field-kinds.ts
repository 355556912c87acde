import * as v from 'valibot';
import type { UnitSymbol } from '../units/convert.ts';
import type { Dimension } from '../units/quantity.ts';
import { amount } from './amount.ts';
import type { Bounds } from './amount.ts';

/** Properties of a field besides the kind of value it holds. */
export interface FieldMarks {
  /** what a new draft starts with; absent: empty */
  readonly blank?: string;
  /** its id in a draft where this differs from its path; null where no draft holds it */
  readonly draft?: string | null;
  /** the field is asked only while this field of the draft has one of these answers */
  readonly when?: readonly [field: string, ...answers: string[]];
  /** the draft's field that holds its unit */
  readonly unitIn?: string;
  /** value to plan with while the draft's field is empty, mm */
  readonly standIn?: number;
  /** its place in printed codes; fields that never occur in the same job may share a place */
  readonly code?: number;
  /** in codes, the number of this place's fields is written before them */
  readonly counted?: true;
  /** why no printed code holds it; for a field without a schema, why only a draft holds it */
  readonly stays?: string;
  /** belongs to the maker: whoever starts from a printed sheet has a value of their own */
  readonly own?: true;
  /** the drawing was fitted to it: when it changes, the drawing must be made again */
  readonly drawnOn?: true;
}

/** A field of any kind, as the code that goes through the table sees it. */
export interface JobField extends FieldMarks {
  readonly kind:
    'text' | 'word' | 'words' | 'flag' | 'count' | 'share' | 'amount' | 'point' | 'metals' | 'json';
  /** schema in the job file; absent where only a draft holds the field */
  readonly schema?: v.GenericSchema;
  readonly optional?: true;
  /** what a job file means when it leaves the field out */
  readonly fallback?: unknown;
  readonly of?: readonly string[];
  /** how many bits a word takes in codes */
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

/** A metal or a salt. The job file accepts other names too, which `parseJob` turns into ids. */
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

/** A share above 0: at most 1 in the job file, per cent in a draft. */
export const share = <const M extends FieldMarks>(marks: M) => ({
  kind: 'share' as const,
  unit: '%' as const,
  schema: v.pipe(v.number(), v.gtValue(0), v.maxValue(1)),
  ...marks,
});

/** An amount within bounds. */
export const quantity = <D extends Dimension, const B extends Bounds & FieldMarks>(
  dimension: D,
  field: B,
) => ({
  kind: 'amount' as const,
  dimension,
  schema: amount(dimension, field),
  ...field,
});

/** Position of a centre: across and up, mm. */
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

/** Metals in the bath, by element. At most fifteen, because a printed code holds no more. */
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

/** A field that only drafts hold. */
export const noted = <const M extends FieldMarks & { stays: string; unit?: UnitSymbol }>(marks: M) => ({
  kind: 'text' as const,
  ...marks,
});

type WithSchema = { readonly schema: v.GenericSchema };

/** Marks a field that a job file may leave out. */
export const optional = <F extends WithSchema>(field: F) =>
  ({ ...field, schema: v.optional(field.schema), optional: true }) as unknown as Omit<F, 'schema'> & {
    readonly schema: v.OptionalSchema<F['schema'], undefined>;
    readonly optional: true;
  };

/** Marks a field that a job file may leave out, which then means the usual value. */
export const usually = <F extends WithSchema, const V extends v.InferInput<F['schema']>>(
  field: F,
  fallback: V,
) =>
  ({ ...field, schema: v.optional(field.schema, fallback), fallback }) as unknown as Omit<F, 'schema'> & {
    readonly schema: v.OptionalSchema<F['schema'], V>;
    readonly fallback: V;
  };
