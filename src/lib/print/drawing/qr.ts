import encodeQR from 'qr';
import { mm } from '../paper.ts';
import { svg } from './hatch.ts';

/** Smallest module that a home printer and a phone's camera agree on, mm. */
const MODULE = 0.45;
/** White that readers need around the code, modules. */
const QUIET = 4;

/** A QR code as drawn: its SVG carries its own quiet zone. */
export interface DrawnCode {
  readonly svg: string;
  /** modules along a side, without the quiet zone */
  readonly modules: number;
  readonly level: 'quartile' | 'medium';
}

const grid = (text: string, ecc: DrawnCode['level']): readonly (readonly boolean[])[] =>
  encodeQR(text, 'raw', { ecc, border: QUIET });

/** Dark runs, row by row, as one path: pieces of one path leave no seams between them. */
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
 * A QR code on a square of paper. A quarter of it may be spoilt where its modules stay large enough for
 * that, else a seventh.
 * @param side of the square, quiet zone included, mm
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
