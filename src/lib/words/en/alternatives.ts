import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { Alternative } from '../../core/plan/alternatives.ts';
import type { AmmeterGain } from '../../core/plan/questions.ts';
import type { Figure } from '../../core/units/figure.ts';
import { plain } from './locale.ts';
import { amountText, withUnit } from './units.ts';

export const alternativesTexts = {
  title: 'Gentler and more even, or quicker',
  solving: 'Solving the cell for other gaps.',
  none: 'With this supply and tub no other way is worth the change.',
  failed: 'Not worked out:',
} as const;

const heads = { gentler: 'Gentler', quicker: 'Quicker' } as const;

/** Another way of etching, in at most three sentences. */
export function alternativeText(
  { id, gap, control, setting, minutes, evenness }: Alternative,
  units: ReadingUnits,
): string {
  const knob = control === 'amps' ? withUnit(plain(setting, 2), 'A') : withUnit(plain(setting, 2), 'V');
  const bite =
    evenness === null || Math.abs(evenness.then - evenness.now) < 1
      ? ''
      : ` Shallow parts get ${withUnit(plain(evenness.then, 2), '%')} of the deep ones, not ${withUnit(plain(evenness.now, 2), '%')}.`;
  const care = id === 'gentler' ? '' : ' It warms and fizzes more: look sooner.';
  return `${heads[id]}: gap ${amountText(gap, 'mm', units, 2)}, ${knob}, about ${withUnit(plain(minutes, 2), 'min')}.${bite}${care}`;
}

/** What an ammeter would improve, for a bench without one. */
export const ammeterTexts = {
  title: 'What an ammeter would change',
  working: 'Planning it with an ammeter.',
  cannot: 'Give the bare area first.',
} as const;

const spanOf = ({ low, high }: Figure): string => withUnit(`${plain(low, 2)} to ${plain(high, 2)}`, 'min');

/** The minutes as planned, and with a supply that holds the current and shows amps. */
export const ammeterText = (gain: AmmeterGain): string =>
  `By the clock alone the bite may take ${spanOf(gain.without)}. A bench supply that holds and shows amps: ${spanOf(gain.with)}, and you see at once when something is wrong.`;
