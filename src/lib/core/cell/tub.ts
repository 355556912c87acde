import { si } from '../units/quantity.ts';
import type { Area, Length, Volume } from '../units/quantity.ts';
import type { Cathode, Piece, Tub } from './setup.ts';

/*
 * A piece taller than the liquid or wider than the tub is refused, not planned in part. For a half-dipped
 * piece the maker must enter the part below the surface.
 */

/** Thickness assumed for a plate whose own is not asked. */
export const plateThickness = si<'length'>(0.001);

/** The tub as a box. A round tub becomes a square of the same floor area, a jug a cube of its water. */
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

/** Height of the plate below the surface. */
export const immersedHeight = (cathode: Cathode, tub: Tub): Length =>
  tub.kind === 'jug' ? cathode.height : si<'length'>(Math.min(cathode.height, tub.fill));

/** Volume of liquid that the pieces and the plate displace. */
export function displaced(piece: Piece, cathode: Cathode, tub: Tub): Volume {
  const oneFace = piece.faces === 'both' ? piece.faceArea / 2 : piece.faceArea;
  const pieces = oneFace * piece.thickness * piece.count;
  return si<'volume'>(pieces + cathode.width * immersedHeight(cathode, tub) * plateThickness);
}

/**
 * Factor from width to what must fit. A disc is computed as a square of equal area, but its diameter must
 * fit.
 */
const reachOf = ({ shape }: Piece): number => (shape === 'disc' ? 2 / Math.sqrt(Math.PI) : 1);

/** Tolerance for rounding errors of added millimetres, m. */
const LOST = 1e-9;

/** Why the parts do not fit into this tub. */
export type Misfit = 'tooTall' | 'tooWide' | 'tooLong' | 'tooMany' | 'crowded';

/** Checks piece, plate and gap against the tub; null when they fit. A jug has no known walls. */
export function misfit(piece: Piece, cathode: Cathode, tub: Tub): Misfit | null {
  if (tub.kind === 'jug') return null;
  const reach = reachOf(piece);
  const isOver = (taken: number, room: number) => taken > room + LOST;
  if (isOver(reach * piece.height, tub.fill)) return 'tooTall';
  const across = Math.max(reach * piece.width, cathode.width);
  const along = cathode.gap + piece.thickness + plateThickness;
  if (tub.kind === 'round') {
    if (isOver(across, tub.diameter)) return 'tooWide';
    if (isOver(Math.hypot(across, along), tub.diameter)) return 'tooLong';
  } else {
    if (isOver(across, tub.width)) return 'tooWide';
    if (isOver(along, tub.length)) return 'tooLong';
  }
  const box = boxOf(tub);
  if (piece.count * piece.width * piece.height > box.width * box.fill) return 'tooMany';
  const displacedVolume = displaced(piece, cathode, tub);
  return displacedVolume > 0.5 * box.floor * box.fill ? 'crowded' : null;
}

/** Smallest gap to a plate, m: any closer, they might touch. */
const NEAREST = si<'length'>(0.005);
const MM = 1e-3;
/** Round up or down to whole units, with a tolerance for rounding errors. */
const upTo = (value: number, unit: number) => Math.ceil(value / unit - 1e-6);
const downTo = (value: number, unit: number) => Math.floor(value / unit + 1e-6);

/**
 * Highest number of pieces that can hang upright side by side in rows, if one of them fits. A jug holds any
 * number.
 */
export function mostHung(piece: Piece, tub: Tub): number {
  if (tub.kind === 'jug') return Infinity;
  const box = boxOf(tub);
  const reach = reachOf(piece);
  // one piece that fits can always hang, even where the square of a round tub is narrower than the tub
  return Math.max(1, downTo(box.width, reach * piece.width) * downTo(box.fill, reach * piece.height));
}

/**
 * Rows in which a batch hangs: as even and as far apart as the tub allows.
 * @returns how many rows, and how many pieces in each row except perhaps the last
 */
export function evenRows(
  { count, width, height }: Piece,
  room: { readonly width: number; readonly fill: number },
): { readonly rows: number; readonly each: number } {
  /** smallest space for each piece over its own size */
  const apart = (rows: number): number =>
    Math.min(room.width / Math.ceil(count / rows) / width, room.fill / rows / height);
  const rows = Array.from({ length: count }, (_, n) => n + 1).reduce((best, one) =>
    apart(one) > apart(best) ? one : best,
  );
  return { rows, each: Math.ceil(count / rows) };
}

/** A change that makes the parts fit, and by how much. */
export interface Remedy {
  readonly way:
    'fill-to' | 'tub-across' | 'tub-long' | 'plate-narrow' | 'plate-near' | 'hang-most' | 'tub-holds';
  readonly amount: { readonly value: number; readonly unit: 'mm' | 'mL' | '1' };
}

/** The smallest single change that removes this misfit, in whole millimetres, pieces or millilitres. */
export function remedyFor(
  reason: Misfit,
  piece: Piece,
  cathode: Cathode,
  tub: Exclude<Tub, { kind: 'jug' }>,
): Remedy {
  const reach = reachOf(piece);
  const own = reach * piece.width;
  const room = tub.kind === 'round' ? tub.diameter : tub.width;
  const mm = (way: Remedy['way'], value: number): Remedy => ({ way, amount: { value, unit: 'mm' } });
  if (reason === 'tooTall') return mm('fill-to', upTo(reach * piece.height, MM));
  if (reason === 'tooWide') {
    return own <= room ? mm('plate-narrow', downTo(room, MM)) : mm('tub-across', upTo(own, MM));
  }
  if (reason === 'tooLong') {
    const across = Math.max(own, cathode.width);
    const long = tub.kind === 'round' ? Math.sqrt(room ** 2 - across ** 2) : tub.length;
    const thick = piece.thickness + plateThickness;
    if (long - thick >= NEAREST) return mm('plate-near', downTo(long - thick, MM));
    const needed = NEAREST + thick;
    return tub.kind === 'round'
      ? mm('tub-across', upTo(Math.hypot(across, needed), MM))
      : mm('tub-long', upTo(needed, MM));
  }
  if (reason === 'tooMany') return { way: 'hang-most', amount: { value: mostHung(piece, tub), unit: '1' } };
  const box = boxOf(tub);
  const half = 0.5 * box.floor * box.fill;
  const takes = (count: number) => displaced({ ...piece, count }, cathode, tub);
  const each = takes(1) - takes(0);
  const most = Math.min(downTo(half - takes(0), each), mostHung(piece, tub));
  return most >= 1
    ? { way: 'hang-most', amount: { value: most, unit: '1' } }
    : { way: 'tub-holds', amount: { value: upTo(2 * takes(1), 1e-6), unit: 'mL' } };
}
