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
 * A picture is processed at no more than 4 million pixels and 50 to the millimetre. That takes about half a
 * second for a piece of 30 × 40 mm. The work is split into parts so that it can report progress and be
 * stopped.
 */

/** How the maker wants a picture to be used. Lengths in mm. */
export interface Wishes {
  /** corners of the piece in the picture, pixels; null when the piece fills the picture */
  readonly corners: Corners | null;
  readonly width: number;
  readonly height: number;
  readonly outline: Outline;
  readonly darkIs: 'resist' | 'bare';
  /** null: whichever of the two suits the picture better */
  readonly method: Parting['method'] | null;
  /** grey level between the tones; null: as found */
  readonly level: number | null;
  /** size below which a detail counts as dust */
  readonly least: number;
  readonly clean: boolean;
  /** places of specks and pinholes that belong to the design */
  readonly keep: readonly Point[];
  readonly undercut: number;
}

export interface Design {
  /** the picture of the piece alone, as seen from straight above */
  readonly flat: Grey;
  readonly mask: Mask;
  /** the design with its resist widened, to be printed */
  readonly grown: Mask;
  readonly method: Parting['method'];
  readonly level: number;
  readonly measured: MeasuredMask;
  readonly specks: Specks;
  readonly foreseen: Foreseen;
  /** the widened design as it will look after the same bite */
  readonly mended: Foreseen;
  /** widening the resist closes bare gaps: their width is too small */
  readonly gapsClose: boolean;
}

/** Highest number of pixels in a millimetre. A line of a tenth of a millimetre still has five. */
const FINEST = 50;

/**
 * The piece around a picture that keeps its proportions: the picture is in the middle, as large as fits on
 * the piece.
 */
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

/**
 * The flat picture of the piece: perspective removed, or the drawing laid on it. Beyond the picture its edge
 * colour continues.
 */
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

/** Progress when each part of the work begins, 0 to 1, from measured times. */
const PARTS = { parted: 0.15, cleaned: 0.3, measured: 0.4, grown: 0.75, foreseen: 0.85 } as const;

/**
 * Makes a design from a picture, part by part, so that the caller can show progress or stop.
 * @returns yields the progress, 0 to 1; returns the design, or why there is none
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

/** A mask in black and white, shrunk to a largest side in pixels: resist dark, bare metal light. */
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

/** A grey picture shrunk to a largest side in pixels, by taking the nearest pixels. */
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
