import { copperSulfateOffset, offsets } from '../facts/electrode-facts.ts';
import { metalGroups } from '../facts/metal-groups.ts';
import { metals } from '../facts/metals.ts';
import type { BitableMetal } from '../facts/metals.ts';
import type { BoughtSalt } from '../facts/salts.ts';
import type { Cathode } from './setup.ts';

/**
 * Volts that drive no current in a fresh bath: those of hydrogen at the plate, unless the bath holds copper
 * ions and the plate takes them.
 */
export function cellOffset(metal: BitableMetal, salt: BoughtSalt, plate: Cathode['metal']) {
  const { family } = metals[metal];
  const shedsCopper = metalGroups[family] === 'copper and brass';
  const platesCopper = salt.facts.id === 'CuSO4' && plate !== 'stainless' && shedsCopper;
  return platesCopper ? copperSulfateOffset : offsets[family][salt.facts.anion];
}
