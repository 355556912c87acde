import type { Setup } from '$lib/core/cell/setup.ts';
import { evenRows, immersedHeight } from '$lib/core/cell/tub.ts';
import { outlineOf } from './length.ts';

/** One metal sheet seen edge on, in drawing units; y is its upper end. */
export interface Bar {
  readonly x: number;
  readonly y: number;
  readonly length: number;
}

export interface TubLayout {
  /** Size of the tub along the gap and across it, and the height of the liquid. */
  readonly along: number;
  readonly across: number;
  readonly fill: number;
  /** Seen from above; y counts from the upper wall of the tub. */
  readonly above: { readonly pieces: readonly Bar[]; readonly plate: Bar };
  /** Seen from the side; y counts from the surface of the liquid. */
  readonly beside: { readonly pieces: readonly Bar[]; readonly plate: Bar };
  /** x of the clips, moved apart where the gap is too narrow for both. */
  readonly clips: { readonly piece: number; readonly plate: number };
  /** How far parts that do not fit stick out at the top and bottom of each view. */
  readonly over: Readonly<Record<'above' | 'beside', readonly [number, number]>>;
}

/** Width of both views. */
const SPAN = 300;
/** Least distance between the centres of the two clips. */
const CLIPS = 34;
/** Free space assumed around the parts where the shape of the tub is not known, m. */
const ROOM = 0.02;

/** Inside size of the tub; where it is not known, as much as the parts need. */
function roomOf({ piece, cathode, tub }: Setup) {
  if (tub.kind === 'box') return { along: tub.length, across: tub.width, fill: tub.fill };
  if (tub.kind === 'round') return { along: tub.diameter, across: tub.diameter, fill: tub.fill };
  const { width, height } = outlineOf(piece);
  return {
    along: cathode.gap + 4 * ROOM,
    across: Math.max(width * Math.ceil(Math.sqrt(piece.count)), cathode.width) + ROOM,
    fill: Math.max(height * Math.ceil(Math.sqrt(piece.count)), cathode.height) + ROOM,
  };
}

const spread = (count: number, pitch: number, middle: number): number[] =>
  Array.from({ length: count }, (_, i) => middle + (i - (count - 1) / 2) * pitch);

/** How far bars stick out of a view that reaches from 0 to `end`. */
function overshoot(bars: readonly Bar[], end: number): [number, number] {
  const top = Math.min(0, ...bars.map(({ y }) => y));
  const bottom = Math.max(end, ...bars.map(({ y, length }) => y + length));
  return [-top, bottom - end];
}

/**
 * Lays out both views of the tub to one scale. Several pieces hang in rows, as the field calculation has
 * them.
 */
export function layOutTub(setup: Setup): TubLayout {
  const { piece, cathode, tub } = setup;
  const room = roomOf(setup);
  const { width, height } = outlineOf(piece);
  const { rows, each: columns } = evenRows(
    { ...piece, width, height },
    { width: room.across, fill: room.fill },
  );
  const scale = SPAN / Math.max(room.along, room.across, cathode.gap, width, cathode.width);
  const [along, across, fill] = [room.along * scale, room.across * scale, room.fill * scale];
  const gap = cathode.gap * scale;
  const [left, right] = [(along - gap) / 2, (along + gap) / 2];

  const centred = (x: number, length: number, at: number): Bar => ({ x, y: at - length / 2, length });
  /** A sheet taller than the liquid stands on the floor and sticks out above. */
  const sunk = (x: number, length: number, at: number): Bar =>
    length > fill ? { x, y: fill - length, length } : centred(x, length, at);

  const above = {
    pieces: spread(columns, across / columns, across / 2).map((y) => centred(left, width * scale, y)),
    plate: centred(right, cathode.width * scale, across / 2),
  };
  const beside = {
    pieces: spread(rows, Math.max(fill / rows, height * scale), fill / 2).map((y) =>
      sunk(left, height * scale, y),
    ),
    plate: sunk(right, immersedHeight(cathode, tub) * scale, fill / 2),
  };
  const apart = Math.max(0, CLIPS - gap) / 2;
  return {
    along,
    across,
    fill,
    above,
    beside,
    clips: { piece: left - apart, plate: right + apart },
    over: {
      above: overshoot([...above.pieces, above.plate], across),
      beside: overshoot([...beside.pieces, beside.plate], fill),
    },
  };
}
