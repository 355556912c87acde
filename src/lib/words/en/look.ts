import { advice } from '../../core/facts/advice.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { count, plain, significant } from './locale.ts';
import { ampHours, depthText } from './amounts.ts';
import { clockTime } from './times.ts';
import { amountText, datumText, withUnit } from './units.ts';

interface Spread {
  readonly low: number;
  readonly high: number;
}

/** Texts of the look at the piece between two runs. */
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
  /** @param wanted depth, mm */
  ofDepth: (wanted: number, units: ReadingUnits): string => `of ${amountText(wanted, 'mm', units, 3)}`,
  on: 'Current was on for',
  inRuns: (runs: number): string => `in ${count(runs, 'run')}`,
  charge: 'Amp-hours',
  chargeSpread: (least: number, most: number): string => `${ampHours(least)} to ${ampHours(most)}`,
  note: 'The count is a guess from the current. The needle and your eye decide.',
  how: 'How to judge it',
  doubt: 'Still in doubt:',
  doubtAct: 'bite a little more and look again. Metal does not come back.',
  verdicts: { deeper: 'Deeper, etch again', enough: 'Deep enough', 'not-sure': 'Not sure' },
} as const;

/** Ways to judge the depth with the mask still on. */
export const depthSigns = (units: ReadingUnits, hasGauge: boolean) => [
  { name: 'Needle', text: 'Draw it across a bare edge: it feels a step sooner than a nail does.' },
  {
    name: 'Fingernail',
    text: `It catches at about ${amountText(advice.nail.value, advice.nail.unit, units, 1)}. Through a glove you feel less.`,
  },
  ...(hasGauge
    ? [
        {
          name: 'Depth gauge or calliper tail',
          text: 'From the resist to the floor; subtract the resist’s own thickness.',
        },
      ]
    : []),
  {
    name: 'Picture',
    text: 'Photograph it beside a ruler, lit from the side, and compare its shadow with the last look.',
  },
];

/** Depth, computed from the weight that the piece has lost. */
export const weighTexts = {
  title: 'By weight, mask on both times',
  dry: (pieces: number): string =>
    `Dry it well, since one drop of water weighs about ${datumText(advice.waterDrop)}.${pieces > 1 ? ` All ${String(pieces)} pieces together.` : ''}`,
  before: 'Before the bite',
  now: 'Now',
  gained: 'It weighs no less than before: dry it, and weigh again.',
  /** @param loss g @param depth um */
  lost: (loss: number, depth: Spread, units: ReadingUnits): string =>
    `${withUnit(significant(loss, 2), 'g')} gone: ${depthText(depth, units)} deep on average.`,
  coarse: (step: number): string =>
    `Your scale shows steps of ${withUnit(plain(step), 'g')}, which is coarse for this piece.`,
} as const;
