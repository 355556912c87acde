/**
 * What is solved: Laplace's equation in a box of bath with insulating walls, floor and surface, and plates
 * hung across it. All lengths in m, conductivity in S/m, potentials in V. x runs from wall to wall along
 * the gap, y across the tub, z up from its floor to the liquid's surface.
 */

/** A rectangle in a plane across the tub. */
export interface Rect {
  readonly y0: number;
  readonly y1: number;
  readonly z0: number;
  readonly z1: number;
}

/** Which part of a plate's face is bare. A bitmap is laid over the outline, row by row from its foot. */
export type Bare =
  | { readonly kind: 'none' }
  | { readonly kind: 'all' }
  | { readonly kind: 'rects'; readonly rects: readonly Rect[] }
  | { readonly kind: 'disc'; readonly y: number; readonly z: number; readonly radius: number }
  | {
      readonly kind: 'bitmap';
      readonly columns: number;
      readonly rows: number;
      /** 1 where bare */
      readonly cells: Uint8Array;
    };

export type Electrode = 'anode' | 'cathode';
/** Side of a plate: towards smaller or larger x. */
export type Side = 'minus' | 'plus';

export interface Plate {
  readonly electrode: Electrode;
  /** where the face on its minus side lies */
  readonly x: number;
  /** 0 for a sheet that is thin against a cell; else solid, its sides insulated */
  readonly thickness: number;
  /** thickness of the resist, where it is not thin against a cell: bare metal lies at its foot */
  readonly mask?: number;
  readonly outline: Rect;
  readonly bare: Readonly<Record<Side, Bare>>;
}

/**
 * What it costs to pass a current through a surface: nothing; a resistance, ohm·m²; or symmetric
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
  /** between the metals, beyond what no current needs */
  readonly volts: number;
  /** largest cell near the metal, m */
  readonly spacing: number;
  /** how much wider each cell may be than its neighbour nearer to the metal; 1 keeps them equal */
  readonly growth?: number;
  /** shrinking of bare edges by the grid made good; on unless a convergence study asks otherwise */
  readonly edgeCorrection?: boolean;
}

/** Why a problem cannot be solved as it stands. Lengths in m. */
export type FieldFault =
  | { readonly id: 'outsideTub'; readonly plate: number; readonly found: number; readonly most: number }
  | { readonly id: 'platesTouch'; readonly plate: number; readonly other: number; readonly least: number }
  | { readonly id: 'nothingBare'; readonly electrode: Electrode }
  | { readonly id: 'maskTooFine'; readonly plate: number; readonly found: number; readonly least: number }
  | { readonly id: 'notPositive'; readonly field: string; readonly found: number };

export const isNothing = (bare: Bare): boolean =>
  bare.kind === 'none' ||
  (bare.kind === 'rects' && bare.rects.length === 0) ||
  (bare.kind === 'disc' && bare.radius <= 0) ||
  (bare.kind === 'bitmap' && !bare.cells.includes(1));

/** Smallest side of a mask's parts, m. */
function finest({ outline }: Plate, bare: Bare): number {
  if (bare.kind === 'rects')
    return Math.min(...bare.rects.flatMap(({ y0, y1, z0, z1 }) => [y1 - y0, z1 - z0]));
  if (bare.kind === 'disc') return 2 * bare.radius;
  if (bare.kind === 'bitmap')
    // of a bitmap one pixel may be left over: what counts is that a cell holds no more than one
    return Math.min((outline.y1 - outline.y0) / bare.columns, (outline.z1 - outline.z0) / bare.rows);
  return Infinity;
}

const overlaps = (a: Rect, b: Rect): boolean => a.y0 < b.y1 && b.y0 < a.y1 && a.z0 < b.z1 && b.z0 < a.z1;

/** A length shorter than this is none: rounding of what was typed in mm. */
const NOTHING = 1e-9;

/** Everything wrong with a problem, the first cause first; empty when it can be solved. */
export function faultsOf({ box, plates, spacing, conductivity, volts }: FieldProblem): readonly FieldFault[] {
  const faults: FieldFault[] = Object.entries({ ...box, spacing, conductivity, volts })
    .filter(([, found]) => !(found > 0))
    .map(([field, found]) => ({ id: 'notPositive', field, found }));
  plates.forEach((plate, n) => {
    const { outline, x, thickness, mask = 0 } = plate;
    for (const [found, most] of [
      [outline.y1, box.width],
      [outline.z1, box.fill],
      [x + thickness + (isNothing(plate.bare.plus) ? 0 : mask), box.length],
      [-outline.y0, 0],
      [-outline.z0, 0],
      [-x, 0],
    ] as const)
      if (found > most + NOTHING) faults.push({ id: 'outsideTub', plate: n, found, most });
    for (const bare of Object.values(plate.bare)) {
      const found = finest(plate, bare);
      if (found < spacing / 2) faults.push({ id: 'maskTooFine', plate: n, found, least: spacing / 2 });
    }
    plates.slice(n + 1).forEach((other, m) => {
      const gap = Math.max(other.x - (x + thickness), x - (other.x + other.thickness));
      if (overlaps(outline, other.outline) && gap < spacing)
        faults.push({ id: 'platesTouch', plate: n, other: n + 1 + m, least: spacing });
    });
  });
  for (const electrode of ['anode', 'cathode'] as const) {
    const own = plates.filter((plate) => plate.electrode === electrode);
    if (own.every(({ bare }) => isNothing(bare.minus) && isNothing(bare.plus)))
      faults.push({ id: 'nothingBare', electrode });
  }
  return faults;
}
