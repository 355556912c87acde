import { RANGE_Z } from '../units/range.ts';
import { si } from '../units/quantity.ts';
import type { Area, Conductivity, Resistance } from '../units/quantity.ts';
import { bareShare } from './setup.ts';
import type { Faces, Setup } from './setup.ts';
import type { SolvedField } from './solved-field.ts';
import { boxOf, immersedHeight } from './tub.ts';

/*
 * The closed form is used for a jug, and for pieces that cannot hang side by side; the plan says so. From
 * each face the current's path widens on every side by as much as it is away from the metal, ∫dx/A. This is
 * exact in a duct and within 7 % of seven published cells.
 */

/**
 * The bath's resistance in closed form: from each metal face the current's path widens on every side by as
 * much as it is away from the metal, until it meets the walls or the middle of the gap. For opposite strips
 * in a channel this gives ln(1 + h/L), within 3 % of the exact K(k′)/K(k) for L/h ≥ ½ (Newman & Thomas-Alyea,
 * Electrochemical Systems, ch. 18).
 */

/**
 * How much a second bare face lowers the resistance when there is room around the plate; from one published
 * cell.
 */
const BACK_FACE = 0.36;
/** Factor for a bare face that looks away from the plate; an estimate. */
const FACING_AWAY = 1.3;
/** Factor for the longer path of a sideways shift; from one published cell. */
const SIDEWAYS = 0.065;
/** Number of slices in half a gap: with 64 the error is below 0.1 %. */
const SLICES = 64;

export interface ClosedForm {
  readonly resistance: Resistance;
  /**
   * standard deviation of the logarithm: from the closed form, and from not knowing where the bare parts are
   */
  readonly spread: number;
}

/** Cross-section of the tub, which limits the path of the current, m. */
interface Room {
  readonly wide: number;
  readonly deep: number;
}

/** ∫dx/A from a rectangle to the middle of the gap, 1/m, when `alike` such rectangles share the room. */
function halfPath(width: number, height: number, half: number, room: Room, alike: number): number {
  let sum = 0;
  for (let i = 0; i < SLICES; i += 1) {
    const away = 2 * ((i + 0.5) / SLICES) * half;
    const one = Math.min(width + away, room.wide) * Math.min(height + away, room.deep);
    sum += 1 / Math.min(alike * one, room.wide * room.deep);
  }
  return (sum * half) / SLICES;
}

/** Factor on the resistance of one bare face when the other face or both are bare. */
function faceFactor(faces: Faces, width: number, height: number, room: Room): number {
  if (faces === 'back') return FACING_AWAY;
  if (faces === 'front') return 1;
  return 1 - BACK_FACE * (1 - Math.min(1, (width * height) / (room.wide * room.deep)));
}

/** Distance between the centres of piece and plate, across and up combined, m. */
function shiftOf({ piece, cathode, tub }: Setup): number {
  if (!piece.at || tub.kind === 'jug') return Math.abs(cathode.sideways);
  const box = boxOf(tub);
  return Math.hypot(piece.at.y - (box.width / 2 + cathode.sideways), piece.at.z - box.fill / 2);
}

/** Uncertainty of the real geometry and immersion against the drawing, and of the grid: of the logarithm. */
const SOLVED_SPREAD = 0.05;
/**
 * The same for a face bare up to the edge of a sheet with an insulated back: the grid is least exact there.
 */
const TO_THE_EDGE = 0.08;

/**
 * Resistance of the bath between piece and plate, from the solved field.
 * @param field solved for both extremes of where the bare parts may be
 */
export function solvedResistance(
  { scattered, compact, error }: SolvedField,
  { piece }: Setup,
  conductivity: Conductivity,
): ClosedForm {
  const edge = piece.faces === 'both' ? 0 : TO_THE_EDGE / 2;
  return {
    resistance: si<'resistance'>(Math.sqrt(scattered * compact) / conductivity),
    spread: Math.hypot(SOLVED_SPREAD, edge, error, Math.log(compact / scattered) / (2 * RANGE_Z)),
  };
}

/**
 * Resistance of the bath between piece and plate. The bare parts may be close together or scattered over the
 * whole piece: the value is the geometric mean of both, and both are within the range.
 * @param openArea bare metal of one piece
 */
export function closedFormResistance(setup: Setup, openArea: Area, conductivity: Conductivity): ClosedForm {
  const { piece, cathode, tub } = setup;
  const half = cathode.gap / 2;
  const box = boxOf(tub);
  const room = tub.kind === 'jug' ? { wide: Infinity, deep: Infinity } : { wide: box.width, deep: box.fill };
  const plateHeight = immersedHeight(cathode, tub);
  const plate =
    halfPath(cathode.width, plateHeight, half, room, 1) *
    faceFactor(cathode.faces === 'back' ? 'front' : cathode.faces, cathode.width, plateHeight, room);

  const side = Math.sqrt(bareShare(piece, openArea));
  const [scattered, compact] = [1, side].map((scale) => {
    const [width, height] = [piece.width * scale, piece.height * scale];
    const path = halfPath(width, height, half, room, piece.count);
    return path * faceFactor(piece.faces, width, height, room) + plate;
  }) as [number, number];

  const shift = Math.min(shiftOf(setup) / cathode.gap, 3);
  const form = Math.sqrt(scattered * compact) * (1 + SIDEWAYS * shift ** 2);
  return {
    resistance: si<'resistance'>(form / conductivity),
    spread: Math.hypot(piece.faces === 'front' ? 0.08 : 0.12, Math.log(compact / scattered) / (2 * RANGE_Z)),
  };
}
