import { si } from '../units/quantity.ts';
import type { Area, Conductivity, Length, Resistance } from '../units/quantity.ts';
import { boxOf, immersedHeight } from './tub.ts';
import { bareShare } from './setup.ts';
import type { Setup } from './setup.ts';

/**
 * Widening of the current's path between facing strips, as a share of the gap: 2·ln 2/π in each
 * direction (long strips opposite each other in a channel, Newman & Thomas-Alyea ch. 18).
 */
const END_ALLOWANCE = (2 * Math.LN2) / Math.PI;
/** Weight of the piece's path against the plate's; fitted to the published cells by ±6 %. */
const PIECE_WEIGHT = 0.8;
/** Both faces bare on both sides: resistance against front only, from the two-sided published cell. */
const BOTH_FACES = 0.775;
/** The bare face looks away from the plate: estimate. */
const FACING_AWAY = 1.3;
/** A sideways shift lengthens the path; fitted to one published cell. */
const SIDEWAYS = 0.065;
/** Normal quantile of 95 %. */
const Z95 = 1.645;

export interface ClosedForm {
  readonly resistance: Resistance;
  /** area that the current's path has on average */
  readonly pathArea: Area;
  /** standard deviation of the logarithm: the form itself, and where the bare parts lie */
  readonly spread: number;
}

/** A rectangle's path area, widened by the end allowance and held by the walls. */
function widened(width: number, height: number, gap: Length, wide: number, deep: number): number {
  const allowance = END_ALLOWANCE * gap;
  return Math.min(width + allowance, wide) * Math.min(height + allowance, deep);
}

/**
 * Resistance of the bath between piece and plate in closed form, gap/(κ·A) with end allowance.
 * The bare parts may sit close together or lie scattered over the whole piece: the value is the
 * geometric mean of both, and both lie inside the range.
 * @param openArea bare metal of one piece
 */
export function closedFormResistance(setup: Setup, openArea: Area, conductivity: Conductivity): ClosedForm {
  const { piece, cathode, tub } = setup;
  const { gap } = cathode;
  const box = boxOf(tub);
  const [wide, deep] = tub.kind === 'jug' ? [Infinity, Infinity] : [box.width, box.fill];
  const side = Math.sqrt(bareShare(piece, openArea));
  const crossSection = wide * deep;
  const scattered = Math.min(piece.count * widened(piece.width, piece.height, gap, wide, deep), crossSection);
  const compact = Math.min(
    piece.count * widened(piece.width * side, piece.height * side, gap, wide, deep),
    crossSection,
  );
  const plate = widened(cathode.width, immersedHeight(cathode, tub), gap, wide, deep);
  const pieceArea = Math.sqrt(scattered * compact);
  const pathArea = si<'area'>(pieceArea ** PIECE_WEIGHT * plate ** (1 - PIECE_WEIGHT));
  const facing = piece.faces === 'both' ? BOTH_FACES : piece.faces === 'back' ? FACING_AWAY : 1;
  const shift = sidewaysShift(setup) / gap;
  const offset = 1 + SIDEWAYS * Math.min(shift, 3) ** 2;
  const formSpread = piece.faces === 'front' ? 0.08 : 0.15;
  return {
    resistance: si<'resistance'>((gap / (conductivity * pathArea)) * facing * offset),
    pathArea,
    spread: Math.hypot(formSpread, Math.log(scattered / compact) / (2 * Z95)),
  };
}

/** How far the piece's centre sits from the plate's, across and up together. */
export function sidewaysShift({ piece, cathode, tub }: Setup): number {
  if (!piece.at || tub.kind === 'jug') return Math.abs(cathode.sideways);
  const box = boxOf(tub);
  const across = piece.at.y - (box.width / 2 + cathode.sideways);
  const up = piece.at.z - box.fill / 2;
  return Math.hypot(across, up);
}
