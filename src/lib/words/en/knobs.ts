import type { Supply } from '../../core/cell/setup.ts';
import { amountText } from './units.ts';

/** The screen that says how to set the supply. */
export const knobsTexts = {
  title: 'Hang, clip and set',
  papers: 'Print the bench card',
  wiring: 'From the supply to the metals: plus to the piece, minus to the plate',
  piece: 'piece',
  plate: 'plate',
  loop: 'Each wire hangs in a loop: drops fall off there.',
  supply: { bench: 'bench supply', adapter: 'adapter', battery: 'battery' },
  noArea: 'The bare area is still missing. Choose Resist above and give it.',
} as const;

/** Says which knobs the plan's figures are for, since the proposal beside them may differ. */
export function typedKnobs(supply: Supply): string {
  const knobs =
    supply.control === 'amps'
      ? `${amountText(supply.amps, 'A')} held, ${amountText(supply.maxVolts, 'V')} as a ceiling`
      : `${amountText(supply.volts, 'V')}${supply.maxAmps === null ? '' : `, at most ${amountText(supply.maxAmps, 'A')}`}`;
  return `These figures are for the supply as typed: ${knobs}.`;
}
