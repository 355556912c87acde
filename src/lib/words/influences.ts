import type { InputId } from '../core/plan/budget.ts';
import type { Influence } from '../core/plan/influence.ts';
import { plain } from '../core/units/format.ts';
import { withUnit } from './units.ts';

export const influenceTexts = {
  title: 'What moves the depth',
  working: 'Working it out.',
  none: 'The plan is not whole yet.',
  failed: 'Not worked out:',
  intro: 'Each by itself, all else as planned: the depth at the low and the high end of what it may be.',
  what: 'What may differ',
  depth: 'Depth',
  share: 'Share',
} as const;

/** In words a maker uses, with what makes it surer. */
export const inputWords: Readonly<Record<InputId, string>> = {
  areaFactor: 'Bare area: measure it from a drawing',
  geometryFactor: 'Gap, tub, and where the bare parts lie',
  conductivityFactor: 'Strength and temperature of the bath',
  offset: 'Volts that the surfaces take',
  leads: 'Leads and clips: measure them',
  yield: 'Bite rate of this metal: a test strip tells yours',
  slowness: 'Films, sludge, a poor contact',
  volumeFactor: 'Filling of the tub',
  undercutRatio: 'Creep under the resist',
  coolingFactor: 'How fast the tub cools',
  saturation: 'What the liquid at the metal carries',
  meterFactor: 'Your meter',
  roomFactor: 'Size of the room',
};

export const influenceText = ({ low, high }: Influence): string =>
  `${plain(low, 3)} to ${withUnit(plain(high, 3), 'um')}`;
