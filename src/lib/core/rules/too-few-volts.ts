import { cellOffset } from '../cell/offset.ts';
import { isBitable } from '../facts/metals.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import type { RefusalRule } from './rule.ts';

/** Volts above the offset needed for a bite that does not take too long. */
const MARGIN = 0.3;

/** Below the cell's own offset almost nothing dissolves. */
export const tooFewVolts = {
  id: 'too-few-volts',
  kind: 'block',
  step: 'settings',
  sources: ['cellOffsets', 'tradePractice'],
  applies: ({ piece, bath, cathode, supply }) => {
    const salt = findBoughtSalt(bath.salt);
    if (salt === null || !isBitable(piece.metal)) return null;
    const needed = cellOffset(piece.metal, salt, cathode.metal).median.value + MARGIN;
    const volts = supply.control === 'volts' ? supply.volts : supply.maxVolts;
    return volts >= needed
      ? null
      : { volts: { value: volts, unit: 'V' }, needed: { value: needed, unit: 'V' } };
  },
} as const satisfies RefusalRule;
