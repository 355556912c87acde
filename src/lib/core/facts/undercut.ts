import type { Table } from './datum.ts';

/** Depth over the width of the opening, the same in every row. */
const depthOverWidth = [0.05, 0.1, 0.2, 0.4, 0.57, 0.8, 1.13, 1.6, 2] as const;

const row = (regime: string, maskOverWidth: number, y: readonly number[]) =>
  ({
    unit: '1',
    xUnit: '1',
    x: depthOverWidth,
    y,
    uncertainty: { kind: 'relative', value: 0.005 },
    validFor: { maskOverWidth: [maskOverWidth, maskOverWidth, '1'] },
    evidence: 'computed',
    source: 'undercutSimulation',
    locator: `${regime}, resist over opening ${String(maskOverWidth)}`,
  }) as const satisfies Table;

/**
 * Undercut over depth of one opening, by its depth over its width. Each row is for one thickness of resist
 * over the opening's width. Ohmic: the bath alone decides where the current goes; otherwise the surface evens
 * it out (Wagner number 1).
 */
export const undercutTable = {
  ohmic: [
    [0.02, row('ohmic', 0.02, [0.87, 0.79, 0.69, 0.64, 0.64, 0.68, 0.71, 0.77, 0.82])],
    [0.1, row('ohmic', 0.1, [0.72, 0.66, 0.61, 0.6, 0.62, 0.66, 0.71, 0.77, 0.81])],
    [0.25, row('ohmic', 0.25, [0.61, 0.56, 0.55, 0.57, 0.6, 0.65, 0.71, 0.77, 0.8])],
    [0.5, row('ohmic', 0.5, [0.55, 0.5, 0.51, 0.55, 0.59, 0.64, 0.7, 0.76, 0.8])],
    [1, row('ohmic', 1, [0.49, 0.46, 0.49, 0.54, 0.58, 0.64, 0.7, 0.76, 0.8])],
  ],
  polarised: [
    [0.02, row('Wa = 1', 0.02, [1.02, 0.98, 0.93, 0.87, 0.85, 0.83, 0.83, 0.84, 0.86])],
    [0.1, row('Wa = 1', 0.1, [0.98, 0.95, 0.9, 0.85, 0.83, 0.82, 0.83, 0.84, 0.85])],
    [0.5, row('Wa = 1', 0.5, [0.95, 0.91, 0.86, 0.82, 0.81, 0.81, 0.82, 0.83, 0.85])],
  ],
} as const satisfies Readonly<Record<string, readonly (readonly [number, Table])[]>>;
