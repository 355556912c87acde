import encodeQR from 'qr';
import { mm } from '../paper.ts';
import { svg } from './hatch.ts';

/** Smallest module that home printers print and phones read, mm. */
const MODULE = 0.45;
/** White margin that readers need around the code, modules. */
const QUIET = 4;

/** A QR code as a drawing. Its SVG includes the white margin. */
export interface DrawnCode {
  readonly svg: string;
  /** modules along a side, without the white margin */
  readonly modules: number;
  readonly level: 'quartile' | 'medium';
}

const grid = (text: string, ecc: DrawnCode['level']): readonly (readonly boolean[])[] =>
  encodeQR(text, 'raw', { ecc, border: QUIET });

/** Dark runs, row by row, as one path, because separate shapes would leave seams between them. */
const path = (rows: readonly (readonly boolean[])[]): string =>
  rows
    .flatMap((row, y) =>
      row.flatMap((dark, x) => {
        if (!dark || row[x - 1] === true) return [];
        const light = row.indexOf(false, x);
        const length = (light < 0 ? row.length : light) - x;
        return [`M${x} ${y}h${length}v1h-${length}z`];
      }),
    )
    .join('');

/**
 * A QR code in a square. It stays readable with a quarter of it damaged if its modules are then large enough,
 * otherwise with a seventh.
 * @param side of the square with its white margin, mm
 */
export function qrCode(text: string, side: number): DrawnCode {
  const strong = grid(text, 'quartile');
  const isLarge = side / strong.length >= MODULE;
  const level = isLarge ? 'quartile' : 'medium';
  const rows = isLarge ? strong : grid(text, level);
  const scale = mm(side) / rows.length;
  return {
    svg: svg(
      mm(side),
      mm(side),
      `<g transform="scale(${scale.toFixed(5)})"><path d="${path(rows)}" fill="#000"/></g>`,
    ),
    modules: rows.length - 2 * QUIET,
    level,
  };
}
