import type { Setup } from '$lib/core/cell/setup.ts';
import { evenRows, immersedHeight } from '$lib/core/cell/tub.ts';
import { outlineOf } from './length.ts';

/** One metal sheet, edge on, in drawing units; y is its upper end. */
export interface Bar {
  readonly x: number;
  readonly y: number;
  readonly length: number;
}

export interface TubLayout {
  /** tub along the gap, across it, and liquid */
  readonly along: number;
  readonly across: number;
  readonly fill: number;
  /** seen from above; y from the tub's upper wall */
  readonly above: { readonly pieces: readonly Bar[]; readonly plate: Bar };
  /** seen from the side; y from the liquid's surface */
  readonly beside: { readonly pieces: readonly Bar[]; readonly plate: Bar };
  /** x of the clips, moved apart where the gap is too narrow for both */
  readonly clips: { readonly piece: number; readonly plate: number };
  /** how far parts that do not fit stick out of each view, at its top and its bottom */
  readonly over: Readonly<Record<'above' | 'beside', readonly [number, number]>>;
}

/** Width that both views share. */
const SPAN = 300;
/** Least distance between the middles of two clips. */
const CLIPS = 34;
/** Room taken around the parts where a tub's shape is not known, m. */
const ROOM = 0.02;

/** Room inside the tub; for an unknown one as much as the parts ask for. */
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

/** What sticks out of a view from 0 to `end`. */
function overshoot(bars: readonly Bar[], end: number): [number, number] {
  const top = Math.min(0, ...bars.map(({ y }) => y));
  const bottom = Math.max(end, ...bars.map(({ y, length }) => y + length));
  return [-top, bottom - end];
}

/** Lays both views of the tub out to one scale. A batch hangs in rows, as the field has it. */
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
  /** what is taller than the liquid stands on the floor and sticks out above */
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
