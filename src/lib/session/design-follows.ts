import type { Draft, FieldId } from './draft.ts';

/** Answers that the picture was laid on: with another size it is another design. */
const sizes: readonly FieldId[] = [
  'piece.shape',
  'piece.width',
  'piece.height',
  'piece.diameter',
  'piece.length',
  'unit.length',
];

/** Changes an answer, and what was measured from a drawing with it: no area of another piece is planned with. */
export function changed(draft: Draft, field: FieldId, value: string): Draft {
  const next = { ...draft, [field]: value };
  if (draft['piece.design'] === '' || draft[field] === value) return next;
  if (sizes.includes(field))
    return { ...next, 'piece.design': '', 'piece.area': 'later', 'piece.openArea': '' };
  if (field !== 'piece.faces') return next;
  const isBoth = (faces: string): boolean => faces === 'both';
  if (isBoth(value) === isBoth(draft['piece.faces'])) return next;
  const area = Number(draft['piece.openArea']) * (isBoth(value) ? 2 : 0.5);
  return { ...next, 'piece.openArea': String(Number(area.toPrecision(6))) };
}
