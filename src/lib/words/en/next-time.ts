import { plain, significant } from './locale.ts';

/** "You got 60 μm where 100 was planned. Next time 28 min, or 0.4 A for the same 17 min." */
export function nextTimeText(next: {
  readonly gotUm: number;
  readonly wantedUm: number;
  readonly minutes: number;
  readonly amps: number | null;
  readonly atMinutes: number;
}): string {
  const { gotUm, wantedUm, minutes, amps, atMinutes } = next;
  const orAmps =
    amps === null ? '' : `, or ${significant(amps, 2)} A for the same ${plain(atMinutes, 2)} min`;
  return `You got ${plain(gotUm, 3)} μm where ${plain(wantedUm, 3)} was planned. Next time: ${plain(minutes, 2)} min with current on${orAmps}.`;
}
