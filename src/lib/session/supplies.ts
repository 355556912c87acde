import { numberIn } from '../core/units/typed-number.ts';
import type { Draft, FieldId } from './draft.ts';

/** What is said of a supply. */
export const supplyFields = [
  'supply.kind',
  'supply.amps',
  'supply.volts',
  'supply.maxAmps',
] as const satisfies readonly FieldId[];

/** The supplies of a workshop by their id there, as stored. */
export type Supplies = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** The answers that choose a supply; the kind comes first, since it sets the others to its own usual values. */
export const answersOf = (supplies: Supplies, id: string): Partial<Draft> => ({
  'workshop.supply': id,
  ...Object.fromEntries(supplyFields.map((field) => [field, supplies[id]?.[field] ?? ''])),
});

/** An id that no supply has yet. */
export const freeId = (supplies: Supplies): string =>
  String(1 + Math.max(0, ...Object.keys(supplies).map((id) => numberIn(id) ?? 0)));

/** The workshop without one of its supplies. */
export const withoutSupply = (supplies: Supplies, id: string): Record<string, Record<string, string>> =>
  Object.fromEntries(
    Object.entries(supplies).flatMap(([other, one]) => (other === id ? [] : [[other, { ...one }]])),
  );

/** The workshop with the job's supply as it is described now; one of no kind is none. */
export function withSupply(supplies: Supplies, draft: Draft): Record<string, Record<string, string>> {
  const id = draft['workshop.supply'];
  const others = withoutSupply(supplies, id);
  return id === '' || draft['supply.kind'] === ''
    ? others
    : { ...others, [id]: Object.fromEntries(supplyFields.map((field) => [field, draft[field]])) };
}
