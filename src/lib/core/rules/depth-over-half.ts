import type { WarningRule } from './rule.ts';

/** The upper end of the depth range, on all bitten faces together, removes more than half the metal. */
export const depthOverHalf = {
  id: 'depth-over-half',
  kind: 'watch',
  step: 'metal',
  signal: 'NOTICE',
  sources: ['budgetEstimate'],
  applies: ({ piece, figures }) => {
    if (piece.through) return null;
    // until the bare area is known there is no range, so use the wanted depth
    const wanted = piece.depth * 1e6;
    const deepest = figures.depth?.high ?? wanted;
    const faces = piece.faces === 'both' ? 2 : 1;
    const thickness = piece.thickness * 1e6;
    if (faces * deepest <= thickness / 2) return null;
    return {
      depth: figures.depth ?? { value: wanted, unit: 'um' },
      left: { value: Number(Math.max(0, thickness - faces * deepest).toPrecision(2)), unit: 'um' },
      thickness: { value: thickness, unit: 'um' },
    };
  },
} as const satisfies WarningRule;
