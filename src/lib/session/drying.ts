import { resistFacts } from '../core/facts/resists.ts';
import type { ResistKind } from '../core/facts/resists.ts';
import { toSi } from '../core/units/convert.ts';
import { SECOND } from '../core/units/time.ts';

/** How a coat of resist stands. All in ms; `readyAt` since 1970. */
export interface Drying {
  readonly left: number;
  readonly readyAt: number;
}

/**
 * How long a painted resist still has to dry.
 * @param paintedAt as the draft holds it: ms since 1970, empty while nothing is painted
 * @returns null before it is painted, and for a resist that needs no drying
 */
export function dryingOf(kind: ResistKind, paintedAt: string, now: number): Drying | null {
  const { dries } = resistFacts[kind];
  const at = Number(paintedAt);
  if (dries === null || paintedAt === '' || !Number.isFinite(at)) return null;
  const whole = toSi(dries.value, dries.unit, 'time') * SECOND;
  // painted after now: the clock has been set back, and all of the time is still to come
  const readyAt = Math.min(at, now) + whole;
  return { left: Math.max(0, readyAt - now), readyAt };
}
