import { advice } from '../../core/facts/advice.ts';
import { datumText } from './units.ts';

/** Texts of the questions about the workshop, which are asked only once. */
export const workshopTexts = {
  title: 'Your workshop',
  lead: 'Asked once: all that follows is for what you have. Change it any time.',
  current: 'What gives the current?',
  place: 'Where, and for whom?',
  tools: 'What else is there?',
  /** Scales have a question of their own, about their smallest step. */
  equipment: [
    { value: 'goggles', label: 'Splash goggles' },
    { value: 'gloves', label: 'Nitrile gloves' },
    { value: 'tray', label: 'Tray with a rim' },
    { value: 'jar', label: 'Jar with a lid, never for food' },
    { value: 'thermometer', label: 'Thermometer' },
    { value: 'multimeter', label: 'Multimeter' },
    { value: 'calliper', label: 'Calliper or depth gauge' },
  ],
  nothing: 'Nothing yet?',
  get: `Get a bench supply with knobs for volts and amps, sealed from the mains, that gives ${datumText(advice.smallSupplyMost)}. One that shows amps makes the time surer: you stop by the amp-hours that have passed, not by the clock alone.`,
} as const;
