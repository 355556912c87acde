const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** Wall time as the maker's clock shows it. */
export const clockTime = (at: number): string =>
  new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' }).format(at);

export const dayText = (at: number): string =>
  new Intl.DateTimeFormat(undefined, { dateStyle: 'medium' }).format(at);

export const dayAndClockText = (at: number): string =>
  new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' }).format(at);

/** A stretch of time, such as 3 min 12 s. */
export function spanText(ms: number): string {
  const [hours, minutes, seconds] = [
    Math.floor(ms / HOUR),
    Math.floor((ms % HOUR) / MINUTE),
    Math.floor((ms % MINUTE) / 1000),
  ];
  if (hours > 0) return `${String(hours)} h ${String(minutes)} min`;
  return minutes > 0 ? `${String(minutes)} min ${String(seconds)} s` : `${String(seconds)} s`;
}

/** The same, its digits apart from what follows or leads them, where a clock counts to twelve. */
export function clockParts(at: number): { readonly digits: string; readonly half: string } {
  const parts = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' }).formatToParts(at);
  const half = parts.find(({ type }) => type === 'dayPeriod')?.value ?? '';
  return {
    digits: parts
      .filter(({ type }) => type !== 'dayPeriod')
      .map(({ value }) => value)
      .join('')
      .trim(),
    half,
  };
}
