import type { FieldId } from '$lib/session/draft.ts';
import { typedNumber } from '$lib/session/job-file.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** Lengths asked on later screens: they must stay as long when the unit changes. */
const elsewhere: readonly FieldId[] = [
  'cathode.gap',
  'cathode.width',
  'cathode.height',
  'tub.length',
  'tub.width',
  'tub.diameter',
  'tub.fill',
];
const MM_PER_INCH = 25.4;

/**
 * Changes what lengths are typed in. Numbers on the same screen stay as typed, since the maker is just
 * saying what they were; the others are converted, to a tenth of a millimetre.
 */
export function changeLengthUnit(session: JobSession, to: 'mm' | 'in'): void {
  if (session.draft['unit.length'] === to) return;
  for (const field of elsewhere) {
    const typed = typedNumber(session.draft[field]);
    if (typeof typed !== 'number') continue;
    const converted = to === 'in' ? (typed / MM_PER_INCH).toFixed(2) : (typed * MM_PER_INCH).toFixed(1);
    session.set(field, String(Number(converted)));
  }
  const isBlank = session.draft['piece.thickness'].trim() === '';
  if (isBlank && ['mm', 'in'].includes(session.draft['piece.thickness.unit']))
    session.set('piece.thickness.unit', to);
  session.set('unit.length', to);
  void session.settle();
}
