import type { Draft, FieldId } from '$lib/session/draft.ts';
import { unitSymbol } from '$words/units.ts';

/** Units of the fields that are always typed in the same one. */
const fixed: Partial<Record<FieldId, string>> = {
  'piece.openArea': 'cm2',
  'piece.openShare': '%',
  'piece.depth': 'mm',
  'piece.polish': 'mm',
  'tub.waterByJug': 'mL',
  'bath.strength': 'g/L',
  'bath.chargePassed': 'A.h',
  'supply.volts': 'V',
  'supply.maxAmps': 'A',
  'place.room': 'm3',
  scale: 'g',
};

/** The unit that a field of this draft is typed in, as it is written. */
export function unitIn(field: FieldId, draft: Draft): string {
  if (field === 'bath.temperature') return unitSymbol(draft['unit.temperature']);
  if (field === 'piece.thickness') return draft['piece.thickness.unit'];
  return unitSymbol(fixed[field] ?? draft['unit.length']);
}
