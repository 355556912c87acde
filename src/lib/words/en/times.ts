import { times } from './locale.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** Moments in ms since 1970, written by the maker's own clock and calendar. */
export const {
  clock: clockTime,
  clockParts,
  day: dayText,
  fullDay: fullDayText,
  dayAndClock: dayAndClockText,
} = times;

/** A length of time, such as 3 min 12 s. */
export function spanText(ms: number): string {
  const [hours, minutes, seconds] = [
    Math.floor(ms / HOUR),
    Math.floor((ms % HOUR) / MINUTE),
    Math.floor((ms % MINUTE) / 1000),
  ];
  if (hours > 0) return `${String(hours)} h ${String(minutes)} min`;
  return minutes > 0 ? `${String(minutes)} min ${String(seconds)} s` : `${String(seconds)} s`;
}
