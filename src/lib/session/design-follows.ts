import { fieldIdOf, fieldRows } from '../core/job/fields.ts';
import { blankDraft } from './draft.ts';
import type { Draft, FieldId } from './draft.ts';

/** Answers that the drawing was fitted to: when one changes, the drawing no longer holds. */
const drawnOn = new Set<FieldId | null>([
  'unit.length',
  ...fieldRows.flatMap(([path, row]) => (row.drawnOn ? [fieldIdOf(path)] : [])),
]);

/** Answers that no screen asks go back to their defaults when an answer they depend on changes. */
function hidden(field: FieldId): Partial<Draft> {
  // screens ask what the supply can give: its volts, and at most its amps
  if (field.startsWith('supply.')) return { 'supply.control': 'volts' };
  // another resist has not been painted yet
  if (field === 'resist.kind') return { 'resist.paintedAt': '' };
  return drawnOn.has(field) || field.startsWith('tub.') ? { 'piece.at': '', 'cathode.sideways': '0' } : {};
}

/** Clears the values of a supply when another kind is chosen. */
const freshSupply = (kind: string): Partial<Draft> => ({
  'supply.amps': kind === 'bench' ? 'yes' : 'no',
  'supply.volts': kind === 'bench' ? blankDraft['supply.volts'] : '',
  'supply.maxAmps': kind === 'bench' ? blankDraft['supply.maxAmps'] : '',
});

/** A wire taped to the back is no hanger for a piece that is bitten on both faces. */
export const withoutBack = <D extends Partial<Draft>>(draft: D): D =>
  draft['piece.faces'] === 'both' && draft.hanger === 'wire' ? { ...draft, hanger: 'tab' } : draft;

/**
 * Changes an answer, and clears those that no longer hold with it, such as the area of another piece or its
 * place in another tub.
 */
export function changed(draft: Draft, field: FieldId, value: string): Draft {
  if (draft[field] === value) return draft;
  const next = withoutBack({
    ...draft,
    ...hidden(field),
    ...(field === 'supply.kind' ? freshSupply(value) : {}),
    [field]: value,
  });
  if (draft['piece.design'] === '') return next;
  if (drawnOn.has(field)) return { ...next, 'piece.design': '', 'piece.area': 'later', 'piece.openArea': '' };
  if (field !== 'piece.faces') return next;
  const isBoth = (faces: string): boolean => faces === 'both';
  if (isBoth(value) === isBoth(draft['piece.faces'])) return next;
  const area = Number(draft['piece.openArea']) * (isBoth(value) ? 2 : 0.5);
  return { ...next, 'piece.openArea': String(Number(area.toPrecision(6))) };
}
