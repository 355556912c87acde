/**
 * Writes numbers, days and times for a locale, with pure functions. Words come from the folder of the
 * language.
 */

/** How a locale writes numbers. */
export interface Numbers {
  /**
   * A value to `digits` significant digits, without exponent or separators: 1234 becomes 1230 at three.
   * @param finest least step that can be told apart; finer digits are left out, but one always stays
   */
  readonly significant: (value: number, digits?: number, finest?: number) => string;
  /** The same without trailing zeros, for typed or exact values: 20, not 20.0. */
  readonly plain: (value: number, digits?: number, finest?: number) => string;
  /**
   * Both ends of a range with as many digits as their difference deserves: two, or three when they nearly
   * agree.
   */
  readonly ends: (low: number, high: number, finest?: number) => readonly [string, string];
  /** "1 job", "3 jobs". */
  readonly count: (n: number, one: string, other?: string) => string;
}

/** Number of digits left when the last digit must not be finer than `finest`. */
const coarsened = (rounded: number, digits: number, finest: number): number =>
  finest === 0
    ? digits
    : Math.max(1, Math.min(digits, Math.floor(Math.log10(Math.abs(rounded) / finest) + 1e-9) + 1));

export function numbersIn(locale: string): Numbers {
  const writers = new Map<number, Intl.NumberFormat>();
  let plurals: Intl.PluralRules | null = null;
  /** @param least significant digits to write, including zeros */
  const written = (value: number, least: number): string => {
    let writer = writers.get(least);
    writer ??= new Intl.NumberFormat(locale, {
      minimumSignificantDigits: least,
      maximumSignificantDigits: 21,
      useGrouping: false,
    });
    writers.set(least, writer);
    // A hyphen is not a minus sign, so it is replaced.
    return writer.format(value).replace('-', '−');
  };
  const rounded = (value: number, digits: number, finest: number) => {
    const kept = coarsened(Number(value.toPrecision(digits)), digits, finest);
    return { value: Number(value.toPrecision(kept)), digits: kept };
  };
  const significant = (value: number, digits = 3, finest = 0): string => {
    if (value === 0) return written(0, 1);
    const to = rounded(value, digits, finest);
    return written(to.value, to.digits);
  };
  return {
    significant,
    plain: (value, digits = 4, finest = 0) =>
      written(value === 0 ? 0 : rounded(value, digits, finest).value, 1),
    ends: (low, high, finest = 0) => {
      const digits = high > 0 && (high - low) / high < 0.1 ? 3 : 2;
      return [significant(low, digits, finest), significant(high, digits, finest)];
    },
    count: (n, one, other = `${one}s`) =>
      `${written(n, 1)} ${(plurals ??= new Intl.PluralRules(locale)).select(n) === 'one' ? one : other}`,
  };
}

/** How a locale writes days and times. Moments are in ms since 1970 and shown in the device's time zone. */
export interface Times {
  /** 14:05, or 2:05 pm where the locale has a 12-hour clock. */
  readonly clock: (at: number) => string;
  /** The same in two parts: the digits, and am or pm. */
  readonly clockParts: (at: number) => { readonly digits: string; readonly half: string };
  /** 3 Nov 2026 */
  readonly day: (at: number) => string;
  /** 3 November 2026 */
  readonly fullDay: (at: number) => string;
  readonly dayAndClock: (at: number) => string;
}

export function timesIn(locale: string): Times {
  /** Created at first use: most pages show no time, and creating a formatter takes longer than using it. */
  const writer = (options: Intl.DateTimeFormatOptions): (() => Intl.DateTimeFormat) => {
    let made: Intl.DateTimeFormat | null = null;
    return () => (made ??= new Intl.DateTimeFormat(locale, options));
  };
  const clock = writer({ hour: '2-digit', minute: '2-digit' });
  const day = writer({ dateStyle: 'medium' });
  const fullDay = writer({ dateStyle: 'long' });
  const both = writer({ dateStyle: 'medium', timeStyle: 'short' });
  return {
    clock: (at) => clock().format(at),
    clockParts: (at) => {
      const parts = clock().formatToParts(at);
      const isHalf = ({ type }: Intl.DateTimeFormatPart): boolean => type === 'dayPeriod';
      return {
        digits: parts
          .filter((part) => !isHalf(part))
          .map(({ value }) => value)
          .join('')
          .trim(),
        half: parts.find(isHalf)?.value ?? '',
      };
    },
    day: (at) => day().format(at),
    fullDay: (at) => fullDay().format(at),
    dayAndClock: (at) => both().format(at),
  };
}
