import { plain, significant } from '../../core/units/format.ts';
import { ampHours, depthText } from './amounts.ts';
import { clockTime } from './times.ts';
import { withUnit } from './units.ts';

interface Spread {
  readonly low: number;
  readonly high: number;
}

/** The look at the piece between two bites. */
export const lookTexts = {
  title: 'Deep enough?',
  lead: 'Goggles and gloves stay on. Lift with plastic tongs into the first-rinse tub, look in slanting light.',
  maskStays: 'The mask stays on.',
  lastChance: 'The mask stays on: it is the last chance to go deeper.',
  whenOff: 'When did the supply go off?',
  wentOff: 'The supply went off',
  early: (at: number): string => `At about ${clockTime(at)}`,
  earlyHint: 'the last that this page knows of',
  planned: (at: number): string => `At ${clockTime(at)}`,
  plannedHint: 'the planned stop',
  late: (at: number): string => `Only now, at ${clockTime(at)}`,
  notKnown: 'Not known: leave it. The depth below then spans both.',
  depth: 'Depth by that count',
  /** @param wanted mm */
  ofDepth: (wanted: number): string => `of ${withUnit(plain(wanted, 3), 'mm')}`,
  on: 'Current was on for',
  inRuns: (runs: number): string => `in ${String(runs)} run${runs === 1 ? '' : 's'}`,
  charge: 'Amp-hours',
  chargeSpread: (least: number, most: number): string => `${ampHours(least)} to ${ampHours(most)}`,
  note: 'The count is a guess from the current. The needle and your eye decide.',
  how: 'How to judge it',
  doubt: 'Still in doubt:',
  doubtAct: 'bite a little more and look again. Metal does not come back.',
  verdicts: { deeper: 'Deeper, etch again', enough: 'Deep enough', 'not-sure': 'Not sure' },
} as const;

/** Ways to judge a depth with the mask still on. */
export const depthSigns = [
  { name: 'Needle', text: 'Draw it across a bare edge: it feels a step sooner than a nail does.' },
  { name: 'Fingernail', text: 'It catches at about 0.1 mm. Through a glove you feel less.' },
  {
    name: 'Depth gauge or calliper tail',
    text: 'From the resist to the floor; take off the resist’s own thickness.',
  },
  {
    name: 'Picture',
    text: 'Photograph it beside a ruler, lit from the side: the shadow tells one look from the next.',
  },
] as const;

/** Depth by what the piece has lost in weight. */
export const weighTexts = {
  title: 'By weight, mask on both times',
  dry: (pieces: number): string =>
    `Dry it well, since one drop of water weighs about 0.05 g.${pieces > 1 ? ` All ${String(pieces)} pieces together.` : ''}`,
  before: 'Before the bite',
  now: 'Now',
  gained: 'It weighs no less than before: dry it, and weigh again.',
  /** @param loss g @param depth um */
  lost: (loss: number, depth: Spread): string =>
    `${withUnit(significant(loss, 2), 'g')} gone: ${depthText(depth)} deep on average.`,
  coarse: (step: number): string =>
    `Your scale shows steps of ${withUnit(plain(step), 'g')}, which is coarse for this piece.`,
} as const;
