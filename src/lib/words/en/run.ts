import { offSignOf, supplyKindOf } from '../../core/facts/supplies.ts';
import type { OffSign } from '../../core/facts/supplies.ts';
import { clockTime, spanText } from './times.ts';

/** Texts on the screen of a run, whether of the piece or of a test strip. */
export const runTexts = {
  title: 'Biting',
  answerChanged: 'An answer changed. Stop now, then look again.',
  timeIsUp: 'Time is up. Stop, then switch off at the supply.',
  heldElsewhere: 'Another page holds this run. Switch off at the supply, then take over here.',
  switchOn: (showsAmps: boolean): string =>
    showsAmps
      ? 'Switch on at the supply now, then read the amps.'
      : 'Switch on at the supply now, then look: fine bubbles rise at the plate.',
  stopAt: 'Stop at',
  /** @param left ms, negative when time is up */
  left: (left: number): string => (left > 0 ? `${spanText(left)} to go` : `${spanText(-left)} over`),
  /** called out so many minutes before the end */
  called: { 1: 'Less than one minute left.', 5: 'Less than five minutes left.' },
  away: (span: number): string => `Away ${spanText(span)}: the time kept running.`,
  passed: (percent: number): string => `${String(percent)} % of the time with current on has passed.`,
  usedUp: 'The planned time is used up.',
  lookDue: 'A look is due.',
  nextLook: (at: number): string => `Next look at ${clockTime(at)}.`,
  noLook: 'No look before the stop.',
  wrong: 'Something looks wrong',
  look: 'Stop for a look',
  on: 'Current on for',
  charge: 'Amp-hours so far',
  of: (whole: string): string => `of ${whole}`,
  ownAlarm: (at: number): string =>
    `Set your phone’s own alarm for ${clockTime(at)} too: a sleeping page rings no bell.`,
  card: (at: number): string =>
    `Write ${clockTime(at)} on the card, so that you have it when the phone is dead.`,
  screen: {
    asked: '',
    held: 'The screen stays on.',
    refused: 'The screen may go dark here: look at the clock yourself.',
    absent: 'This browser cannot keep the screen on: look at the clock yourself.',
  },
  tryBell: 'Try the bell',
  rung: 'Three tones. Not heard: turn the volume up.',
  notRung: 'Press once more: the browser needs two taps.',
  stop: 'Stop',
  thenOff: 'Then switch off at the supply: only you can.',
} as const;

/** For a maker who sees something wrong: the question, and what to do first. */
export const wrongTexts = {
  asks: 'What do you see or smell?',
  thenOff: 'Then switch off at the supply.',
  back: 'Back to the clock',
} as const;

/** For a page that was closed or asleep during a run. */
export const resumingTexts = {
  title: 'Is the supply still on?',
  look: 'Look at it. The clock has kept running.',
  stripSince: (startedAt: number): string =>
    `A window of the test strip was biting when the page closed. It began at ${clockTime(startedAt)}.`,
  answers: {
    off: 'It is off',
    on: 'It is on, and the bite goes on',
    'not-sure': 'Not sure',
  },
} as const;

/** After Stop: asks whether the supply is off. */
export const stoppingTexts = {
  title: 'Is the supply off?',
  /** @param late ms since the run should have stopped */
  wentAway: (startedAt: number, planned: number, late: number): string =>
    `A run was on when the page closed. It began at ${clockTime(startedAt)} and was to stop at ${clockTime(planned)}${late > 60_000 ? `, ${spanText(late)} ago` : ''}.`,
  powered: 'Until then it counts as powered: hands out of the bath, off the clips.',
  since: (span: number): string => `${spanText(span)} since Stop.`,
  answers: 'The supply',
  notZero: 'Switch it off at the supply. Still on: pull its plug out of the wall, then look again.',
} as const;

interface SupplyOffTexts {
  readonly asks: string;
  /** The answer that ends the run; `zeroAfter` is its wording once the maker was unsure. */
  readonly zero: string;
  readonly zeroAfter: string;
  readonly notZero: string;
  readonly notSure: string;
  /** How to cut the power off when there is no meter to trust. */
  readonly dead: string;
}

const withMeter: SupplyOffTexts = {
  asks: 'Switch off at the supply. What does its meter read?',
  zero: 'Supply off, meter reads zero',
  zeroAfter: 'Supply off: plug pulled',
  notZero: 'It reads something else',
  notSure: 'Not sure',
  dead: 'Pull the plug of the supply. Then it is zero: press the first answer.',
};
const pluggedIn: SupplyOffTexts = {
  asks: 'Switch off and unplug the supply.',
  zero: 'Supply off: pulled out of the wall',
  zeroAfter: 'Supply off: pulled out of the wall',
  notZero: 'It is still on',
  notSure: 'Not sure',
  dead: 'Pull it out of the wall. Then it is off: press the first answer.',
};
const supplyOff: Readonly<Record<OffSign, SupplyOffTexts>> = {
  meter: withMeter,
  unplugged: pluggedIn,
  'lead-off': {
    ...pluggedIn,
    asks: 'Take a lead off the battery.',
    zero: 'Supply off: battery disconnected',
    zeroAfter: 'Supply off: battery disconnected',
    dead: 'Take one lead off the battery, or its fuse out. Then it is off: press the first answer.',
  },
};

/**
 * How to see that a supply of this kind is off, and what to do when the maker is not sure.
 * @param kind as the draft holds it
 */
export const supplyOffTexts = (kind: string, showsAmps: boolean): SupplyOffTexts =>
  supplyOff[offSignOf(supplyKindOf(kind), showsAmps)];
