import type { Watch } from './rule.ts';

/** The upper end of the depth, on all bitten faces together, takes more than half the metal. */
export const depthOverHalf = {
  id: 'depth-over-half',
  kind: 'watch',
  step: 'metal',
  signal: 'NOTICE',
  sources: ['budgetEstimate'],
  applies: ({ piece, figures }) => {
    const { depth } = figures;
    if (!depth || piece.through) return null;
    const faces = piece.faces === 'both' ? 2 : 1;
    const left = piece.thickness * 1e6 - faces * depth.high;
    if (faces * depth.high <= (piece.thickness * 1e6) / 2) return null;
    return {
      depth,
      left: { value: Math.max(0, left) / 1000, unit: 'mm' },
      thickness: { value: piece.thickness * 1000, unit: 'mm' },
    };
  },
} as const satisfies Watch;
