import { depthMapOf } from '../field/depth-map.ts';
import type { DepthMap } from '../field/depth-map.ts';
import { evennessOf } from '../field/evenness.ts';
import { faultsOf } from '../field/faults.ts';
import type { Bare, FieldProblem, Plate, Rect } from '../field/problem.ts';
import { solveWithEstimate } from '../field/estimate.ts';
import type { FaceCurrent, FieldOptions } from '../field/solve.ts';
import type { Shares } from '../mask/shares.ts';
import type { Area } from '../units/quantity.ts';
import { bareShare } from './setup.ts';
import type { Setup } from './setup.ts';
import { boxOf, evenRows, immersedHeight, mostHung } from './tub.ts';

/*
 * Plans use a 2 mm grid, coarser for large cells, so that the same job gives the same plan on every device.
 * Without artwork it is not known where the bare parts are: the cell is solved with them scattered and close
 * together, the value is the geometric mean, and both are within the range. A solution comes with its error:
 * the difference on a grid of twice the spacing, at least 0.3 %.
 */

/** A piece in its place in the tub. */
export interface HungPiece {
  /** its centre, m: across the tub and up from its floor */
  readonly y: number;
  readonly z: number;
  /** its bite over the mean of the batch */
  readonly relative: number;
}

/** Result of solving the cell. It is valid for any conductivity. */
export interface SolvedField {
  /** ohm in a bath of 1 S/m, with the bare parts scattered over the whole face, and close together */
  readonly scattered: number;
  readonly compact: number;
  /** of both arrangements, 0 to 1 */
  readonly evenness: readonly [scattered: number, compact: number];
  /** error of either resistance, as a share: its difference on a coarser grid */
  readonly error: number;
  /** the pieces of the batch, in rows across the tub, from the lowest row up */
  readonly pieces: readonly HungPiece[];
  /** spacing of the grid, m */
  readonly spacing: number;
  /** where the first piece is bitten deepest, on the face towards the plate; null without a drawing */
  readonly map: DepthMap | null;
}

/** Solves a job's cell; null where the grid cannot hold its shape. */
export type CellSolver = (setup: Setup, openArea: Area) => SolvedField | null;

/** Number of grid cells that is quick enough for planning. */
const CELLS = 75_000;
const FINEST = 2e-3;
/** From this thickness on, m, a sheet is solved with its real thickness, otherwise as infinitely thin. */
const SOLID = 0.5e-3;
const CELL_VOLTS = 1;
/** Residual over right side at which to stop; the currents then balance to a millionth. */
const TOLERANCE = 1e-7;
/** Error to assume where a coarser grid cannot hold the mask: twice the worst of the published cells. */
const UNTOLD = 0.02;

const rectAbout = (y: number, z: number, width: number, height: number): Rect => ({
  y0: y - width / 2,
  y1: y + width / 2,
  z0: z - height / 2,
  z1: z + height / 2,
});

/**
 * Centres of the pieces across and up the tub, in even rows as far apart as possible; null where they do not
 * fit.
 */
function hung({ piece, tub }: Setup): readonly (readonly [y: number, z: number])[] | null {
  const box = boxOf(tub);
  const { count } = piece;
  if (count === 1) return [piece.at ? [piece.at.y, piece.at.z] : [box.width / 2, box.fill / 2]];
  if (count > mostHung(piece, tub)) return null;
  const { rows, each } = evenRows(piece, box);
  return Array.from({ length: count }, (_, n) => {
    const row = Math.floor(n / each);
    const inRow = Math.min(each, count - row * each);
    return [((n % each) + 0.5) * (box.width / inRow), (row + 0.5) * (box.fill / rows)];
  });
}

function cathodeOf({ cathode, tub }: Setup, x: number): Plate {
  const box = boxOf(tub);
  const y = box.width / 2 + cathode.sideways;
  const high = immersedHeight(cathode, tub);
  const all = { kind: 'all' } as const;
  const none = { kind: 'none' } as const;
  return {
    electrode: 'cathode',
    x,
    thickness: 0,
    outline: rectAbout(y, box.fill / 2, cathode.width, high),
    // the front of the plate faces the piece
    bare: {
      minus: cathode.faces === 'back' ? none : all,
      plus: cathode.faces === 'front' ? none : all,
    },
  };
}

/** Bare metal of one face, from its drawing. */
const designed = ({ columns, rows, cells }: Shares): Bare => ({
  kind: 'bitmap',
  columns,
  rows,
  cells: Uint8Array.from(cells, (letter) => 17 * parseInt(letter, 16)),
});

/** Bare metal of one face: the whole face, or one patch in its middle. */
function bareOf(setup: Setup, openArea: Area, at: readonly [number, number], compact: boolean): Bare {
  const { piece } = setup;
  const side = compact ? Math.sqrt(bareShare(piece, openArea)) : 1;
  return { kind: 'rects', rects: [rectAbout(at[0], at[1], side * piece.width, side * piece.height)] };
}

/**
 * The cell as a problem for the field.
 * @param compact bare parts close together, instead of scattered over the whole face
 * @returns null for a jug, which has no known walls, and for pieces that cannot hang side by side
 */
export function fieldProblemOf(setup: Setup, openArea: Area, compact: boolean): FieldProblem | null {
  const { piece, cathode, tub } = setup;
  const places = tub.kind === 'jug' ? null : hung(setup);
  if (places === null) return null;
  const box = boxOf(tub);
  const thickness = piece.thickness >= SOLID ? piece.thickness : 0;
  const x = (box.length - cathode.gap - thickness) / 2;
  const none = { kind: 'none' } as const;
  const pieces = places.map((at): Plate => {
    const bare = piece.design ? designed(piece.design) : bareOf(setup, openArea, at, compact);
    return {
      electrode: 'anode',
      x,
      thickness,
      outline: rectAbout(at[0], at[1], piece.width, piece.height),
      bare: {
        minus: piece.faces === 'front' ? none : bare,
        plus: piece.faces === 'back' ? none : bare,
      },
    };
  });
  const volume = box.length * box.width * box.fill;
  return {
    box: { length: box.length, width: box.width, fill: box.fill },
    conductivity: 1,
    plates: [...pieces, cathodeOf(setup, x + thickness + cathode.gap)],
    kinetics: { anode: none, cathode: none },
    volts: CELL_VOLTS,
    spacing: Math.max(FINEST, Math.cbrt(volume / CELLS)),
  };
}

/** Current of each piece over an equal share of the batch's, in the order they hang. */
function pieceShares(faces: readonly FaceCurrent[]): readonly number[] {
  const currents: number[] = [];
  for (const { plate, density, area } of faces) currents[plate] = (currents[plate] ?? 0) + density * area;
  const mean = currents.reduce((sum, one) => sum + one, 0) / currents.length;
  return currents.map((one) => one / mean);
}

/**
 * Depth map of the first piece: of its back if only that is bitten, otherwise of its face towards the plate.
 */
export function faceMap(
  bitten: readonly FaceCurrent[],
  { faces }: Setup['piece'],
  { plates: [first] }: FieldProblem,
): DepthMap | null {
  const side = faces === 'back' ? 'minus' : 'plus';
  const own = bitten.filter((one) => one.plate === 0 && one.side === side);
  return first ? depthMapOf(own, first.outline) : null;
}

interface SolvedOnce {
  readonly resistance: number;
  readonly evenness: number;
  readonly error: number;
  readonly spacing: number;
  readonly pieces: readonly number[];
  readonly map: DepthMap | null;
}

/**
 * Solves one arrangement of the bare parts. @returns ohm at 1 S/m and evenness; null when it cannot be solved
 */
function solvedAs(setup: Setup, openArea: Area, compact: boolean, options: FieldOptions): SolvedOnce | null {
  const problem = fieldProblemOf(setup, openArea, compact);
  if (problem === null || faultsOf(problem).length > 0) return null;
  const solution = solveWithEstimate(problem, { tolerance: TOLERANCE, ...options });
  const { resistance, faces, converged, error } = solution;
  if (!converged) return null;
  const bitten = faces.filter(({ electrode }) => electrode === 'anode');
  return {
    resistance,
    evenness: evennessOf(bitten),
    error: error ?? UNTOLD,
    spacing: problem.spacing,
    pieces: pieceShares(bitten),
    map: setup.piece.design === null ? null : faceMap(bitten, setup.piece, problem),
  };
}

/**
 * Solves the cell of a job. Without a drawing, both extremes of where the bare parts may be are solved.
 * @returns null where the closed form must be used instead
 */
export function solveCell(setup: Setup, openArea: Area, options: FieldOptions = {}): SolvedField | null {
  const scattered = solvedAs(setup, openArea, false, options);
  if (scattered === null) return null;
  // the places of the bare parts are known, or the whole face is bare
  const isKnown = setup.piece.design !== null || bareShare(setup.piece, openArea) > 0.999;
  const compact = isKnown ? scattered : solvedAs(setup, openArea, true, options);
  if (compact === null) return null;
  return {
    scattered: scattered.resistance,
    compact: compact.resistance,
    evenness: [scattered.evenness, compact.evenness],
    error: Math.max(scattered.error, compact.error),
    pieces: (hung(setup) ?? []).flatMap(([y, z], n): HungPiece[] => {
      const relative = scattered.pieces[n];
      return relative === undefined ? [] : [{ y, z, relative }];
    }),
    spacing: scattered.spacing,
    map: scattered.map,
  };
}

/** Everything a solution depends on: the same text means the same field. */
export const cellKey = ({ piece, cathode, tub }: Setup, openArea: Area): string =>
  JSON.stringify([
    piece.width,
    piece.height,
    piece.thickness,
    piece.faces,
    piece.faceArea,
    piece.count,
    piece.at,
    piece.design,
    cathode.width,
    cathode.height,
    cathode.gap,
    cathode.sideways,
    cathode.faces,
    tub,
    openArea,
  ]);

/** How many solved cells to keep: the job's, and those with other gaps shown beside it. */
const KEPT = 4;

/**
 * A solver that keeps the last cells, so that planning again with other volts or amps need not solve
 * anything.
 */
export function rememberingSolver(): CellSolver {
  const known = new Map<string, SolvedField | null>();
  return (setup, openArea) => {
    const key = cellKey(setup, openArea);
    const field = known.has(key) ? (known.get(key) ?? null) : solveCell(setup, openArea);
    // move it to the end of the map: the oldest entry is removed first
    known.delete(key);
    known.set(key, field);
    const [oldest] = known.keys();
    if (known.size > KEPT && oldest !== undefined) known.delete(oldest);
    return field;
  };
}
