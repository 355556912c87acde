import { emptyDraft, isAsked } from '../core/job/draft.ts';
import type { Draft } from '../core/job/draft.ts';
import type { JobField } from '../core/job/field-kinds.ts';
import { fieldIdOf, fieldRows } from '../core/job/fields.ts';
import type { FieldId } from '../core/job/fields.ts';
import { BadBits } from './bits.ts';
import { asText, few, fields, flag, number, signed, word, wordOrNone } from './codec.ts';
import type { Codec } from './codec.ts';

/** Title for a job read from a code, since codes do not hold titles. */
const HANDED_OVER = 'From a sheet';
/** Bits for an element's number, and for the number of fields at a place. */
const ELEMENT = 5;
const MANY = 4;

type Held = Readonly<Record<string, number>>;

/** How a field's text in a plain draft becomes bits, by the kind of field. */
function codecOf({ kind, of = [], bits = 0, min = 0 }: JobField): Codec<string> {
  switch (kind) {
    case 'word':
      return word(of, bits);
    case 'words':
      return asText(
        few(word(of, bits)),
        (text) => text.split(' ').filter((one) => one !== ''),
        (chosen) => chosen.join(' '),
      );
    case 'flag':
      return asText(
        flag,
        (text) => text === 'yes',
        (isSo) => (isSo ? 'yes' : 'no'),
      );
    case 'share':
      return asText(
        number,
        (text) => Number(text) / 100,
        (part) => String(Number((100 * part).toPrecision(6))),
      );
    case 'point':
      return asText(
        fields({ y: number, z: number }),
        (text) => {
          const [y = 0, z = 0] = text.split(' ').map(Number);
          return { y, z };
        },
        ({ y, z }) => `${y} ${z}`,
      );
    case 'metals':
      return asText(
        few(fields({ element: word(of, ELEMENT), held: number })),
        (text) =>
          Object.entries(JSON.parse(text || '{}') as Held).map(([element, held]) => ({ element, held })),
        (all) => JSON.stringify(Object.fromEntries(all.map(({ element, held }) => [element, held]))),
      );
    case 'count':
    case 'amount':
      return asText(min < 0 ? signed : number, Number, String);
    default:
      throw new RangeError(`a field of kind "${kind}" found, one that fits a printed code expected`);
  }
}

/** Fields that a code can say nobody has chosen, though a job file has a usual value for them. */
export const mayBeUnchosen = ['supply.kind'] as const satisfies readonly FieldId[];
export type Unchosen = (typeof mayBeUnchosen)[number];
const isUnchosen = (id: FieldId): boolean => mayBeUnchosen.some((one) => one === id);

interface Field {
  readonly id: FieldId;
  readonly row: JobField;
  readonly codec: Codec<string>;
}

/** Fields by their place in the code. Version 1 has places 0 to 33; adding a place needs a new version. */
const places: readonly (readonly Field[])[] = fieldRows.reduce<Field[][]>((all, [path, row]) => {
  const id = fieldIdOf(path);
  if (row.code !== undefined && id !== null) {
    const codec = isUnchosen(id) ? wordOrNone(row.of ?? [], row.bits ?? 0) : codecOf(row);
    (all[row.code] ??= []).push({ id, row, codec });
  }
  return all;
}, []);

/** Whether the number of fields at a place is written before them. Otherwise the answers before tell it. */
const isCounted = (place: readonly Field[]): boolean => place.some(({ row }) => row.counted);
const isOptional = (place: readonly Field[]): boolean =>
  place.some(({ row }) => row.optional && row.kind !== 'flag') && !isCounted(place);
const askedOf = (place: readonly Field[], draft: Draft) => place.filter(({ row }) => isAsked(row, draft));

/**
 * Answers that are the same for every code: it lists what the bath holds, and gives the plate's size in full.
 */
const always = { 'bath.from': 'shelf', 'cathode.size': 'own' } as const;

/** The fields of a plain draft that a printed code holds, in the units of the table of fields. */
export const layout: Codec<Draft> = {
  put: (out, plain) => {
    const draft = { ...plain, ...always };
    for (const place of places) {
      const asked = askedOf(place, draft);
      if (isCounted(place)) out.put(asked.length, MANY);
      if (isOptional(place)) out.put(asked.some(({ id }) => draft[id] !== '') ? 1 : 0, 1);
      for (const { id, codec } of asked)
        if (draft[id] !== '' || !isOptional(place)) codec.put(out, draft[id]);
    }
  },
  take: (from) => {
    const draft: Record<FieldId, string> = { ...emptyDraft, ...always, title: HANDED_OVER };
    for (const place of places) {
      const asked = askedOf(place, draft);
      if (isCounted(place) && from.take(MANY) !== asked.length) throw new BadBits('a size is missing');
      if (isOptional(place) && from.take(1) === 0) continue;
      if (asked.length === 0) throw new BadBits('a value for a field that is not asked');
      for (const { id, codec } of asked) draft[id] = codec.take(from);
    }
    return draft;
  },
};
