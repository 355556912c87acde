import { si } from '../units/quantity.ts';
import type { Area, Length, Volume } from '../units/quantity.ts';
import type { Cathode, Piece, Tub } from './setup.ts';

/** Thickness taken for a plate whose own was not asked for. */
const PLATE_THICKNESS = si<'length'>(0.001);

/** The tub as a box: a round one becomes the rectangle of equal floor, a jug a cube of its water. */
export interface TubBox {
  readonly floor: Area;
  readonly width: Length;
  readonly length: Length;
  readonly fill: Length;
  readonly perimeter: Length;
}

export function boxOf(tub: Tub): TubBox {
  if (tub.kind === 'box') {
    const { length, width, fill } = tub;
    return {
      floor: si<'area'>(length * width),
      width,
      length,
      fill,
      perimeter: si<'length'>(2 * (length + width)),
    };
  }
  if (tub.kind === 'round') {
    const floor = (Math.PI / 4) * tub.diameter ** 2;
    const side = si<'length'>(Math.sqrt(floor));
    return {
      floor: si<'area'>(floor),
      width: side,
      length: side,
      fill: tub.fill,
      perimeter: si<'length'>(Math.PI * tub.diameter),
    };
  }
  const side = si<'length'>(Math.cbrt(tub.water));
  return {
    floor: si<'area'>(side * side),
    width: side,
    length: side,
    fill: side,
    perimeter: si<'length'>(4 * side),
  };
}

/** How much of the plate is under the liquid. */
export const immersedHeight = (cathode: Cathode, tub: Tub): Length =>
  tub.kind === 'jug' ? cathode.height : si<'length'>(Math.min(cathode.height, tub.fill));

/** Liquid pushed aside by the pieces and the plate. */
export function displaced(piece: Piece, cathode: Cathode, tub: Tub): Volume {
  const oneFace = piece.faces === 'both' ? piece.faceArea / 2 : piece.faceArea;
  const pieces = oneFace * piece.thickness * piece.count;
  return si<'volume'>(pieces + cathode.width * immersedHeight(cathode, tub) * PLATE_THICKNESS);
}

/** Why the parts cannot hang in this tub, or null. */
export type Misfit = 'tooTall' | 'tooWide' | 'tooLong' | 'tooMany' | 'crowded';

/** Checks the piece and gap against the tub. A jug has no walls to check against. */
export function misfit(piece: Piece, cathode: Cathode, tub: Tub): Misfit | null {
  if (tub.kind === 'jug') return null;
  // a disc is held as the square of equal area: its diameter is what has to fit
  const reach = piece.shape === 'disc' ? 2 / Math.sqrt(Math.PI) : 1;
  if (reach * piece.height > tub.fill) return 'tooTall';
  const across = Math.max(reach * piece.width, cathode.width);
  const along = cathode.gap + piece.thickness + PLATE_THICKNESS;
  if (tub.kind === 'round') {
    if (across > tub.diameter) return 'tooWide';
    if (Math.hypot(across, along) > tub.diameter) return 'tooLong';
  } else {
    if (across > tub.width) return 'tooWide';
    if (along > tub.length) return 'tooLong';
  }
  const box = boxOf(tub);
  if (piece.count * piece.width * piece.height > box.width * box.fill) return 'tooMany';
  const displacedVolume = displaced(piece, cathode, tub);
  return displacedVolume > 0.5 * box.floor * box.fill ? 'crowded' : null;
}
