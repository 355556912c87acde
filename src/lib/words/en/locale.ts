import { numbersIn, timesIn } from '../format.ts';

/** Language tag of this folder, for documents and lists. */
export const language = 'en';
const locale = 'en-GB';

export const { significant, plain, ends, count } = numbersIn(locale);

/** "0.36 to 0.48"; a single number where both ends are written the same. */
export const fromTo = (low: string, high: string): string => (low === high ? low : `${low} to ${high}`);

export const range = (low: number, high: number, finest = 0): string => fromTo(...ends(low, high, finest));

/** Days and times follow the reader's own region, if the device uses this language. */
const device = new Intl.DateTimeFormat().resolvedOptions().locale;
export const times = timesIn(device.startsWith(language) ? device : locale);
