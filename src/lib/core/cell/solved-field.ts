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
 * A plan is made on the 2 mm grid, coarser for large cells, so that the same job gives the same plan on a
 * phone and on a desk. Where the bare parts lie is not known without artwork: scattered and close together
 * are both solved, the value is their geometric mean, and both lie inside the range. A solution says how far
 * it may be off: what a grid of twice the spacing says otherwise, 0.3 % at least.
 */

/** A piece where it hangs. */
export interface HungPiece {
  /** its middle, m: across the tub and up from its floor */
  readonly y: number;
  readonly z: number;
  /** bite over the batch's mean */
  readonly relative: number;
}

/** What solving the cell has told. It holds for any conductivity. */
export interface SolvedField {
  /** ohm in a bath of 1 S/m: the bare parts scattered over the whole face, and close together */
  readonly scattered: number;
  readonly compact: number;
  /** share, 0 to 1, of either */
  readonly evenness: readonly [scattered: number, compact: number];
  /** of either resistance, as a share of it: what a coarser grid says otherwise */
  readonly error: number;
  /** the pieces of the batch: across the tub, then row by row upwards */
  readonly pieces: readonly HungPiece[];
  /** m, of the grid */
  readonly spacing: number;
  /** where the first piece is bitten deepest, on the face that looks at the plate; null without a drawing */
  readonly map: DepthMap | null;
}

/** Solves a job's cell, or says null where its shape does not let it. */
export type CellSolver = (setup: Setup, openArea: Area) => SolvedField | null;

/** Cells of a grid that is quick enough to plan with. */
const CELLS = 75_000;
const FINEST = 2e-3;
/** A sheet this thick gets its real thickness; a thinner one is a sheet without. */
const SOLID = 0.5e-3;
const CELL_VOLTS = 1;
/** Residual over right side; the currents then balance to a millionth. */
const TOLERANCE = 1e-7;
/** Error taken where a coarser grid could not hold the mask: the worst of the published cells, doubled. */
const UNTOLD = 0.02;

const rectAbout = (y: number, z: number, width: number, height: number): Rect => ({
  y0: y - width / 2,
  y1: y + width / 2,
  z0: z - height / 2,
  z1: z + height / 2,
});

/** Centres of so many pieces across and up the tub, in even rows and as far apart as can be; null where they cannot hang. */
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
    // its front looks back at the piece
    bare: {
      minus: cathode.faces === 'back' ? none : all,
      plus: cathode.faces === 'front' ? none : all,
    },
  };
}

/** Bare metal of one face by its drawing. */
const designed = ({ columns, rows, cells }: Shares): Bare => ({
  kind: 'bitmap',
  columns,
  rows,
  cells: Uint8Array.from(cells, (letter) => 17 * parseInt(letter, 16)),
});

/** Bare metal of one face: all of it, or as one patch in its middle. */
function bareOf(setup: Setup, openArea: Area, at: readonly [number, number], compact: boolean): Bare {
  const { piece } = setup;
  const side = compact ? Math.sqrt(bareShare(piece, openArea)) : 1;
  return { kind: 'rects', rects: [rectAbout(at[0], at[1], side * piece.width, side * piece.height)] };
}

/**
 * The cell as a problem of the field.
 * @param compact bare parts close together, instead of scattered over the whole face
 * @returns null for a jug, which has no walls, and for pieces that cannot hang side by side
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

/** Share of the batch's current that each piece takes, in the order they hang, over an equal share. */
function pieceShares(faces: readonly FaceCurrent[]): readonly number[] {
  const currents: number[] = [];
  for (const { plate, density, area } of faces) currents[plate] = (currents[plate] ?? 0) + density * area;
  const mean = currents.reduce((sum, one) => sum + one, 0) / currents.length;
  return currents.map((one) => one / mean);
}

/** Where the first piece is bitten deepest, on the face that the plate sees best. */
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

/** Solves one arrangement. @returns ohm at 1 S/m and evenness; null when it cannot be solved */
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
 * Solves the cell of a job. Where the bare parts lie is not known without a drawing: both ends are solved.
 * @returns null where the closed form must stand in
 */
export function solveCell(setup: Setup, openArea: Area, options: FieldOptions = {}): SolvedField | null {
  const scattered = solvedAs(setup, openArea, false, options);
  if (scattered === null) return null;
  // where the bare parts lie is known, or they are everywhere
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

/** What a solution rests on: the same text, the same field. */
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

/** Cells that are kept: the job's, and those with other gaps beside it. */
const KEPT = 4;

/** A solver that remembers the last cells: planning again with other knobs solves nothing anew. */
export function rememberingSolver(): CellSolver {
  const known = new Map<string, SolvedField | null>();
  return (setup, openArea) => {
    const key = cellKey(setup, openArea);
    const field = known.has(key) ? (known.get(key) ?? null) : solveCell(setup, openArea);
    // asked for again, it is the youngest
    known.delete(key);
    known.set(key, field);
    const [oldest] = known.keys();
    if (known.size > KEPT && oldest !== undefined) known.delete(oldest);
    return field;
  };
}
