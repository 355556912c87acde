import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { Influence } from '../../core/plan/influence.ts';
import type { Trial } from '../../core/plan/what-if.ts';
import { plain } from './locale.ts';
import { amountText, degreesText, readIn, withUnit } from './units.ts';

export const influenceTexts = {
  title: 'What moves the depth',
  working: 'Working it out.',
  none: 'The plan is not complete yet.',
  failed: 'Not worked out:',
  what: 'What may differ',
  depth: 'Depth',
  share: 'Share',
  tryIt: 'Try',
  tryOne: (what: string): string => `Try: ${what}`,
  give: 'Another value: all else stays, and you stop when planned.',
  cannot: 'That cannot be planned: it does not fit, or is outside what is known.',
} as const;

/**
 * What the table shows.
 * @param misses how far a hand misses what it sets: mm, shares, K and min
 */
export const influencesIntro = (
  misses: Readonly<Record<'gap' | 'knob' | 'strength' | 'temperature' | 'minutes', number>>,
  units: ReadingUnits,
): string =>
  `Each row changes one thing and keeps the rest. The depth is for the low and the high end of its range, or of how far a hand misses it (${[
    amountText(misses.gap, 'mm', units, 2),
    `${amountText(100 * misses.knob, '%')} of a knob`,
    `${amountText(100 * misses.strength, '%')} of strength`,
    degreesText(misses.temperature, units),
    amountText(misses.minutes, 'min'),
  ].join(', ')}: our own estimate). Try another value where there is a button.`;

/** The influences in a maker's words, some with a way to know them more exactly. */
export const inputWords: Readonly<Record<Influence['id'], string>> = {
  gap: 'Gap between piece and plate',
  knob: 'How the knob is set',
  strength: 'Strength of the bath',
  temperature: 'Temperature of the bath',
  time: 'Time: when you stop',
  areaFactor: 'Bare area: measure it from a drawing',
  geometryFactor: 'Tub, plate, and where the bare parts are',
  conductivityFactor: 'How the salt conducts: the tables',
  thresholdVoltage: 'Volts that the surfaces take',
  leads: 'Leads and clips: measure them',
  currentEfficiency: 'Bite rate of this metal: a test strip tells yours',
  slowness: 'Films, sludge, a poor contact',
  volumeFactor: 'Filling of the tub',
  undercutRatio: 'Creep under the resist',
  coolingFactor: 'How fast the tub cools',
  saturation: 'What the liquid at the metal carries',
  meterFactor: 'Your meter',
  roomFactor: 'Size of the room',
};

export function influenceText({ low, high }: Influence, units: ReadingUnits): string {
  const least = readIn(low, 'um', units);
  return `${plain(least.value, 3, least.finest)} to ${amountText(high, 'um', units, 3)}`;
}

/** @param share as a fraction of one */
export const shareText = (share: number): string => withUnit(plain(100 * share, 2), '%');

/**
 * How another value would change the bite if it is stopped as planned.
 * @param wanted um
 */
export function trialText({ depth, minutes, amps }: Trial, wanted: number, units: ReadingUnits): string {
  const off = Math.round(100 * (depth / wanted - 1));
  const beside = off === 0 ? 'as wanted' : `${String(Math.abs(off))} % ${off > 0 ? 'deeper' : 'shallower'}`;
  return `Stopped as planned: ${amountText(depth, 'um', units, 3)}, ${beside}. The wanted ${amountText(wanted, 'um', units, 3)} takes ${withUnit(plain(minutes, 2), 'min')} then, at ${withUnit(plain(amps, 3), 'A')}.`;
}
