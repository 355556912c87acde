import { numbersIn, timesIn } from '../format.ts';

/** This folder's language, for documents and lists. */
export const language = 'en';
/** How its numbers are written. */
const locale = 'en-GB';

export const { significant, plain, ends, count } = numbersIn(locale);

/** "0.36 to 0.48"; one number where both ends read alike. */
export const fromTo = (low: string, high: string): string => (low === high ? low : `${low} to ${high}`);

export const range = (low: number, high: number, finest = 0): string => fromTo(...ends(low, high, finest));

/** Days and clocks go by the reader's own region, where the device speaks this language at all. */
const device = new Intl.DateTimeFormat().resolvedOptions().locale;
export const times = timesIn(device.startsWith(language) ? device : locale);
