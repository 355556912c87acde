import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { plain, significant } from './locale.ts';
import { amountText, readIn } from './units.ts';

/** "You got 60 μm where 100 was planned. Next time 28 min, or 0.4 A for the same 17 min." */
export function nextTimeText(
  next: {
    readonly gotUm: number;
    readonly wantedUm: number;
    readonly minutes: number;
    readonly amps: number | null;
    readonly atMinutes: number;
  },
  units: ReadingUnits,
): string {
  const { gotUm, wantedUm, minutes, amps, atMinutes } = next;
  const orAmps =
    amps === null ? '' : `, or ${significant(amps, 2)} A for the same ${plain(atMinutes, 2)} min`;
  const wanted = readIn(wantedUm, 'um', units);
  return `You got ${amountText(gotUm, 'um', units, 3)} where ${plain(wanted.value, 3, wanted.finest)} was planned. Next time: ${plain(minutes, 2)} min with current on${orAmps}.`;
}
