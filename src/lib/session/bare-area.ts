import type { Piece } from '../core/cell/setup.ts';
import { converted } from '../core/units/convert.ts';

/** The bare area as makers type and read it: cm² of all bitten faces of one piece, or % of them. */

/** Area of all bitten faces of one piece, cm². */
export const facesCm2 = ({ faceArea }: Piece): number => converted(faceArea, 'm2', 'cm2');

const faceCount = ({ faces }: Piece): number => (faces === 'both' ? 2 : 1);

/** Area of one face, cm². */
export const oneFaceCm2 = (piece: Piece): number => facesCm2(piece) / faceCount(piece);

/** The area of a share of the faces, cm². @param percent 0 to 100 */
export const areaOfShare = (piece: Piece, percent: number): number => (facesCm2(piece) * percent) / 100;

/** The share that an area has of the faces, %. */
export const shareOfArea = (piece: Piece, cm2: number): number => (100 * cm2) / facesCm2(piece);

/**
 * Bare area on every bitten face from one drawing, cm² to three digits. @param mm2 as measured on the drawing
 */
export const designCm2 = (piece: Piece, mm2: number): number =>
  Number((faceCount(piece) * converted(mm2, 'mm2', 'cm2')).toPrecision(3));
