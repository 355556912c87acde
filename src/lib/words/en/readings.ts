import { limits } from '../../core/facts/limits.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { fill } from './render.ts';
import { clockTime } from './times.ts';
import { amountText, datumText } from './units.ts';

/** Texts where the maker notes what the meters show. */
export const meterTexts = {
  title: 'What the meter shows',
  names: { amps: 'Amps', volts: 'Volts', celsius: 'Bath' },
  due: 'A reading is due.',
  none: 'Every five minutes. Leave blank what you cannot read.',
  latest: (at: number, values: string): string => `At ${clockTime(at)}: ${values}.`,
  note: 'Note it',
  blank: 'Type what the meter shows, then note it.',
  noted: 'Noted.',
  moved: (before: string, after: string): string => `Noted. The stop moves from ${before} to ${after}.`,
} as const;

interface Meters {
  readonly amps: number | null;
  readonly volts: number | null;
  readonly celsius: number | null;
}

/** "0.35 A, 2.1 V": only what was read. */
export const readingText = ({ amps, volts, celsius }: Meters, units: ReadingUnits): string =>
  (
    [
      [amps, 'A'],
      [volts, 'V'],
      [celsius, 'degC'],
    ] as const
  )
    .flatMap(([value, unit]) => (value === null ? [] : [amountText(value, unit, units, 3)]))
    .join(', ');

/** What an unusual reading means, and what to do first. */
export const readingTexts = {
  'stop-hot': {
    stop: true,
    text: '{stopTemperature} or more: stop now. Resist lifts and gas takes over. Let the bath cool.',
  },
  'volts-high': {
    stop: true,
    text: `${datumText(limits.refusedVolts)} or more: stop now, then turn the volts down to what the plan says.`,
  },
  'amps-jumped': {
    stop: true,
    text: 'Amps are up by half, or the same amps need far fewer volts: resist is lifting, or the parts touch. Stop and look.',
  },
  'amps-gone': {
    stop: true,
    text: 'Amps have fallen below half, or the same amps need twice the volts: film, a loose clip, or the metal is used up. Stop and look. Salt water gives chlorine then: at a pool smell leave and air the room.',
  },
  warm: {
    stop: false,
    text: '{warnTemperature} or more: turn the amps down, or stop and let it cool. Look at the thermometer every minute.',
  },
} as const;

export const alarmText = (alarm: keyof typeof readingTexts, units: ReadingUnits): string =>
  fill(readingTexts[alarm].text, {}, units);
