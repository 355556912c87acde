/**
 * The problem to solve: Laplace's equation in a box of bath with insulating walls, floor and surface, and
 * plates hung across it. All lengths in m, conductivity in S/m, potentials in V. x runs from wall to wall
 * along the gap, y across the tub, z up from its floor to the liquid's surface.
 */

/** A rectangle in a plane of y and z. */
export interface Rect {
  readonly y0: number;
  readonly y1: number;
  readonly z0: number;
  readonly z1: number;
}

/** Which part of a plate's face is bare. A bitmap covers the outline, row by row from its foot. */
export type Bare =
  | { readonly kind: 'none' }
  | { readonly kind: 'all' }
  | { readonly kind: 'rects'; readonly rects: readonly Rect[] }
  | { readonly kind: 'disc'; readonly y: number; readonly z: number; readonly radius: number }
  | {
      readonly kind: 'bitmap';
      readonly columns: number;
      readonly rows: number;
      /** bare share of each cell, 0 to 255, since lines may be thinner than a cell */
      readonly cells: Uint8Array;
    };

export type Electrode = 'anode' | 'cathode';
/** Side of a plate: towards smaller or larger x. */
export type ElectrodeSide = 'minus' | 'plus';

export interface Plate {
  readonly electrode: Electrode;
  /** position of its face on the minus side */
  readonly x: number;
  /** 0 for a sheet much thinner than a cell; otherwise the plate is solid and its sides are insulated */
  readonly thickness: number;
  /**
   * thickness of the resist, when it is not much thinner than a cell: the bare metal then lies at the bottom
   * of it
   */
  readonly mask?: number;
  readonly outline: Rect;
  readonly bare: Readonly<Record<ElectrodeSide, Bare>>;
}

/**
 * The voltage needed to pass current through a surface: none; a resistance, ohm·m²; or symmetric
 * Butler–Volmer, η = b·asinh(j/2j₀), with b in V and j₀ in A/m².
 */
export type Kinetics =
  | { readonly kind: 'none' }
  | { readonly kind: 'linear'; readonly resistance: number }
  | { readonly kind: 'butlerVolmer'; readonly slope: number; readonly exchange: number };

export interface FieldProblem {
  readonly box: { readonly length: number; readonly width: number; readonly fill: number };
  readonly conductivity: number;
  readonly plates: readonly Plate[];
  readonly kinetics: Readonly<Record<Electrode, Kinetics>>;
  /** between the metals, without the voltage needed at zero current */
  readonly volts: number;
  /** size of the largest cell near the metal, m */
  readonly spacing: number;
  /** by what factor each cell may be larger than its neighbour nearer to the metal; 1 keeps them equal */
  readonly growth?: number;
  /**
   * corrects for the current that the grid loses at edges of bare metal; only studies of convergence turn it
   * off
   */
  readonly edgeCorrection?: boolean;
}

export const isNothing = (bare: Bare): boolean =>
  bare.kind === 'none' ||
  (bare.kind === 'rects' && bare.rects.length === 0) ||
  (bare.kind === 'disc' && bare.radius <= 0) ||
  (bare.kind === 'bitmap' && bare.cells.every((share) => share === 0));
