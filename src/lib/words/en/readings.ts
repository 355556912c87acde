import { limits } from '../../core/facts/bench-facts.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { fill } from './render.ts';
import { datumText } from './units.ts';

/** What a reading out of order means, and what to do first. */
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
    text: 'Amps are up by half: resist is lifting, or the parts touch. Stop and look.',
  },
  'amps-gone': {
    stop: true,
    text: 'Amps have fallen below half: film, a loose clip, or the metal is used up. Stop and look. Salt water gives chlorine then: at a pool smell leave and air the room.',
  },
  warm: {
    stop: false,
    text: '{warnTemperature} or more: turn the amps down, or stop and let it cool. Look at the thermometer every minute.',
  },
} as const;

export const readingText = (alarm: keyof typeof readingTexts, units: ReadingUnits): string =>
  fill(readingTexts[alarm].text, {}, units);
