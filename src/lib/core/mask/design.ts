import { compensated, foresee } from './foresee.ts';
import type { Foreseen } from './foresee.ts';
import { maskOf } from './mask.ts';
import type { Outline } from './mask.ts';
import { measure } from './measure.ts';
import type { MeasuredMask } from './measure.ts';
import { cleaned } from './parts.ts';
import type { Specks } from './parts.ts';
import { cornersFault, squared } from './perspective.ts';
import type { Corners, Point } from './perspective.ts';
import type { Grey, Mask, PictureFault } from './raster.ts';
import { partings } from './threshold.ts';
import type { Parting } from './threshold.ts';

/*
 * A picture is worked on at 4 million pixels and 50 to the millimetre at most, about half a second for a
 * piece of 30 × 40 mm, part by part, so that it tells how far it is and can be left.
 */

/** What a maker wants of a picture. Lengths in mm. */
export interface Wishes {
  /** of the piece in the picture, pixels; null when the picture is the piece, edge to edge */
  readonly corners: Corners | null;
  readonly width: number;
  readonly height: number;
  readonly outline: Outline;
  readonly darkIs: 'resist' | 'bare';
  /** null: the better one */
  readonly method: Parting['method'] | null;
  /** grey; null: as found */
  readonly level: number | null;
  /** what is smaller is dust */
  readonly least: number;
  readonly clean: boolean;
  /** places of specks and pinholes that are meant all the same */
  readonly keep: readonly Point[];
  readonly undercut: number;
}

export interface Design {
  /** the picture of the piece alone, seen from straight above */
  readonly flat: Grey;
  readonly mask: Mask;
  /** the resist grown, to be printed */
  readonly grown: Mask;
  readonly method: Parting['method'];
  readonly level: number;
  readonly measured: MeasuredMask;
  readonly specks: Specks;
  readonly foreseen: Foreseen;
  /** the grown design after the same bite */
  readonly mended: Foreseen;
  /** bare gaps that close when the resist is grown: their width is too small */
  readonly gapsClose: boolean;
}

/** Pixels in a millimetre that are kept at most: a line of a tenth of a millimetre still has five. */
const FINEST = 50;

/** The piece about a picture that keeps its proportions: as large as fits, in its middle. */
function about({ width: wide, height: high }: Grey, width: number, height: number): Corners {
  const [w, h] = [Math.max(wide, (high * width) / height), Math.max(high, (wide * height) / width)];
  const [x0, y0, x1, y1] = [(wide - w) / 2, (high - h) / 2, (wide + w) / 2, (high + h) / 2];
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** The flat picture of the piece: perspective taken out, or the drawing laid on it; beyond it its rim goes on. */
function flattened(picture: Grey, { corners, width, height }: Wishes): { grey: Grey; perMm: number } {
  const own = corners ?? about(picture, width, height);
  const side = (a: 0 | 1 | 2 | 3, b: 0 | 1 | 2 | 3): number =>
    Math.hypot(own[a][0] - own[b][0], own[a][1] - own[b][1]);
  const across = Math.max(side(0, 1), side(3, 2)) / width;
  const up = Math.max(side(0, 3), side(1, 2)) / height;
  const perMm = Math.min(FINEST, Math.max(across, up));
  const [columns, rows] = [Math.max(1, Math.round(width * perMm)), Math.max(1, Math.round(height * perMm))];
  const isFlat = corners === null && columns === picture.width && rows === picture.height;
  return { grey: isFlat ? picture : squared(picture, own, columns, rows), perMm };
}

/** How far the work is when each of its parts begins: measured, 0 to 1. */
const PARTS = { parted: 0.15, cleaned: 0.3, measured: 0.4, grown: 0.75, foreseen: 0.85 } as const;

/**
 * Works a picture out part by part, so that whoever asks can tell how far it is, or leave it.
 * @returns each time how far it is, 0 to 1; at last the design, or why there is none
 */
export function* designParts(picture: Grey, wishes: Wishes): Generator<number, Design | PictureFault, void> {
  if (picture.width * picture.height === 0) return { id: 'blank' };
  const fault = wishes.corners && cornersFault(wishes.corners);
  if (fault) return fault;
  const { grey, perMm } = flattened(picture, wishes);
  yield PARTS.parted;
  const ways = partings(grey);
  if (ways === null) return { id: 'oneTone' };
  const way = ways.find(({ method }) => method === wishes.method) ?? ways[0];
  const level = wishes.level ?? way.level;
  const drawn = maskOf(way.grey, level, wishes.darkIs, perMm, wishes.outline);
  yield PARTS.cleaned;
  const clean = cleaned(drawn, wishes.least, wishes.keep);
  const mask = wishes.clean ? clean.mask : drawn;
  yield PARTS.measured;
  const measured = measure(mask);
  yield PARTS.grown;
  const grown = compensated(mask, wishes.undercut);
  yield PARTS.foreseen;
  return {
    flat: grey,
    mask,
    grown,
    method: way.method,
    level,
    measured,
    specks: clean.specks,
    foreseen: foresee(mask, wishes.undercut),
    mended: foresee(grown, wishes.undercut),
    gapsClose: (measured.gap?.width ?? Infinity) <= 2 * wishes.undercut,
  };
}

/** Black and white of a mask, shrunk to a side of so many pixels at most: resist dark, bare metal light. */
export function pictureOf({ width, height, bare, piece }: Mask, most: number) {
  const shrink = Math.min(1, most / Math.max(width, height));
  const [columns, rows] = [Math.max(1, Math.round(width * shrink)), Math.max(1, Math.round(height * shrink))];
  const light = new Float64Array(columns * rows);
  const count = new Float64Array(columns * rows);
  const on = new Float64Array(columns * rows);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const n = Math.floor((y * rows) / height) * columns + Math.floor((x * columns) / width);
      const m = y * width + x;
      light[n] = (light[n] as number) + (bare[m] as number);
      on[n] = (on[n] as number) + (piece[m] as number);
      count[n] = (count[n] as number) + 1;
    }
  const rgba = new Uint8ClampedArray(4 * columns * rows);
  for (let n = 0; n < light.length; n += 1) {
    const here = Math.max(1, count[n] as number);
    const grey = 40 + 205 * ((light[n] as number) / Math.max(1, on[n] as number));
    rgba.set([grey, grey, grey, 255 * ((on[n] as number) / here)], 4 * n);
  }
  return { width: columns, height: rows, rgba };
}

/** A picture in grey, shrunk to a side of so many pixels at most by its nearest ones. */
export function greyPicture({ width, height, data }: Grey, most: number) {
  const shrink = Math.min(1, most / Math.max(width, height));
  const [columns, rows] = [Math.max(1, Math.round(width * shrink)), Math.max(1, Math.round(height * shrink))];
  const rgba = new Uint8ClampedArray(4 * columns * rows);
  for (let y = 0, n = 0; y < rows; y += 1)
    for (let x = 0; x < columns; x += 1, n += 4) {
      const grey =
        data[Math.floor(((y + 0.5) * height) / rows) * width + Math.floor(((x + 0.5) * width) / columns)];
      rgba.fill(grey as number, n, n + 3);
      rgba[n + 3] = 255;
    }
  return { width: columns, height: rows, rgba };
}
