import { fromSi, toSi } from '../units/convert.ts';
import type { UnitSymbol } from '../units/convert.ts';
import type { Dimension, Quantity } from '../units/quantity.ts';
import { fieldIdOf, fieldRows, valueAt } from './fields.ts';
import type { FieldId } from './fields.ts';
import type { JobField } from './field-kinds.ts';
import { numberIn } from '../units/typed-number.ts';

/**
 * What the maker has typed, as text, field by field, so that text which does not parse is not lost. A draft
 * is always a whole job, since every field starts with a sensible value. A step is done once its fields were
 * shown and the maker has continued.
 */
export type Draft = Readonly<Record<FieldId, string>>;

const draftWith = (text: (row: JobField) => string): Draft =>
  Object.fromEntries(
    fieldRows.flatMap(([path, row]) => {
      const id = fieldIdOf(path);
      return id === null ? [] : [[id, text(row)]];
    }),
  ) as unknown as Draft;

export const blankDraft = draftWith(({ blank }) => blank ?? '');
/** A draft without defaults: a job file made from it holds only what is set afterwards. */
export const emptyDraft = draftWith(() => '');

/**
 * Reads a typed number (point or comma, spaces ignored). Text that is not a number is returned, so that the
 * schema names it.
 */
export const typedNumber = (text: string): number | string => numberIn(text) ?? text.trim();

/** Whether a field is asked, given the answers that decide it. */
export const isAsked = ({ when }: JobField, draft: Draft): boolean =>
  when === undefined || when.slice(1).includes(draft[when[0] as FieldId]);

/** The unit that a field is typed in. */
export const unitIn = ({ unit, unitIn: field }: JobField, draft: Draft): string =>
  (field !== undefined && draft[field as FieldId]) || (unit ?? '');

const DIGITS = 6;
const rounded = (value: number, digits = DIGITS): number => Number(value.toPrecision(digits));

const amount = (text: string, unit: string) =>
  text.trim() === '' ? undefined : { value: typedNumber(text), unit };

/** Text that is not JSON is returned as it is, so that the schema of the job file reports it. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
}

const orNothing = (text: string): string | undefined => (text.trim() === '' ? undefined : text);
const listed = (text: string): readonly string[] => text.split(' ').filter((one) => one !== '');

/** From a draft's text to the job file's value, by kind of field; undefined for no entry. */
const written: Readonly<Record<JobField['kind'], (text: string, unit: string) => unknown>> = {
  text: orNothing,
  word: orNothing,
  words: listed,
  flag: (text) => (text === '' ? undefined : text === 'yes'),
  count: typedNumber,
  share: (text) => {
    const percent = typedNumber(text);
    return typeof percent === 'number' ? rounded(percent / 100, 12) : percent;
  },
  amount,
  point: (text, unit) => {
    const [y, z] = listed(text);
    return y === undefined ? undefined : { y: amount(y, unit), z: amount(z ?? '', unit) };
  },
  metals: (text, unit) => {
    const held = text === '' ? undefined : parsed(text);
    return typeof held === 'object' && held !== null
      ? Object.fromEntries(
          Object.entries<unknown>({ ...held }).map(([element, value]) => [element, { value, unit }]),
        )
      : held;
  },
  json: (text) => (text === '' ? undefined : parsed(text)),
};

/** The job file of a draft, with its fields in the order of the table. */
export function fileFrom(draft: Draft): Record<string, unknown> {
  const file: Record<string, unknown> = { etchwright: 1 };
  for (const [path, row] of fieldRows) {
    const id = fieldIdOf(path);
    if (!row.schema || id === null || !isAsked(row, draft)) continue;
    const value = written[row.kind](draft[id], unitIn(row, draft));
    if (value === undefined) continue;
    const [section, name] = path.split('.') as [string, string?];
    if (name === undefined) file[section] = value;
    else file[section] = { ...(file[section] as object | undefined), [name]: value };
  }
  return file;
}

/** An amount as a maker would type it: the fewest digits, six or more, that give it back to six digits. */
function typed(value: Quantity<Dimension>, unit: UnitSymbol, dimension: Dimension): string {
  const exact = fromSi(value, unit);
  const wanted = rounded(value);
  for (let digits = DIGITS; digits < 15; digits += 1) {
    const text = rounded(exact, digits);
    if (rounded(toSi(text, unit, dimension)) === wanted) return String(text);
  }
  return String(exact);
}

/** From an SI value to a draft's text, by kind of field. */
const read: Readonly<
  Record<JobField['kind'], (value: never, unit: UnitSymbol, dimension: Dimension) => string>
> = {
  text: String,
  word: String,
  words: (value: readonly string[]) => value.join(' '),
  flag: (value: boolean) => (value ? 'yes' : 'no'),
  count: String,
  share: (value: number) => String(rounded(100 * value)),
  amount: typed,
  point: ({ y, z }: { y: Quantity<'length'>; z: Quantity<'length'> }, unit) =>
    `${typed(y, unit, 'length')} ${typed(z, unit, 'length')}`,
  metals: (value: Readonly<Record<string, Quantity<'massConcentration'>>>, unit) => {
    const held = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
    return held.length === 0
      ? ''
      : JSON.stringify(
          Object.fromEntries(
            held.map(([element, of]) => [element, Number(typed(of, unit, 'massConcentration'))]),
          ),
        );
  },
  json: (value: unknown) => JSON.stringify(value),
};

/**
 * The draft of a job whose values are in SI, in the structure of a job file.
 * @param said other answers of the draft, such as the kind of tub
 */
export function draftFrom(values: Readonly<Record<string, unknown>>, said: Partial<Draft>): Draft {
  const draft: Record<string, string> = { ...blankDraft, ...said };
  for (const [path, row] of fieldRows) {
    const id = fieldIdOf(path);
    if (!row.schema || id === null || !isAsked(row, draft as unknown as Draft)) continue;
    const value = valueAt(values, path);
    const unit = unitIn(row, draft as unknown as Draft) as UnitSymbol;
    draft[id] =
      value === undefined || value === null
        ? ''
        : read[row.kind](value as never, unit, row.dimension as Dimension);
  }
  return draft as unknown as Draft;
}
