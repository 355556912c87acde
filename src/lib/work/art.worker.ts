import { designParts, greyPicture, pictureOf } from '../core/mask/design.ts';
import type { Design, Wishes } from '../core/mask/design.ts';
import type { MeasuredMask } from '../core/mask/measure.ts';
import { outlines } from '../core/mask/outline.ts';
import type { Loop } from '../core/mask/outline.ts';
import { greyOf } from '../core/mask/raster.ts';
import type { Grey, PictureFault } from '../core/mask/raster.ts';
import { middleOf } from '../core/mask/parts.ts';
import { sharesOf } from '../core/mask/shares.ts';
import type { Shares } from '../core/mask/shares.ts';

export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/** A file that is not opened yet, and by how much to shrink it. */
export interface Closed {
  readonly file: Blob;
  /** factor on its sides */
  readonly shrink: number;
}

/** A small part that may be dust: a hole in the resist, or a bit of resist. Lengths in mm. */
export interface Dust {
  readonly kind: 'pinhole' | 'speck';
  readonly x: number;
  readonly y: number;
  /** width of a disc of its area */
  readonly width: number;
}

/** What a screen shows of a design. Lengths in mm. */
export interface Look {
  readonly method: Design['method'];
  readonly level: number;
  readonly measured: MeasuredMask;
  readonly pinholes: number;
  readonly specks: number;
  /** the largest of both kinds, sorted row by row */
  readonly dust: readonly Dust[];
  /** parts of the resist lost at the wanted depth, as drawn and with the resist widened */
  readonly lost: number;
  readonly lostGrown: number;
  readonly left: number;
  readonly gapsClose: boolean;
  readonly shares: Shares;
  /** the piece as loaded, as drawn, after the bite, with the resist widened, and that after the bite */
  readonly pictures: Readonly<Record<'flat' | 'drawn' | 'after' | 'grown' | 'mended', Pixels>>;
}

export type ArtQuestion = { readonly id: number } & (
  | { readonly asks: 'load'; readonly picture: Pixels }
  | { readonly asks: 'open'; readonly closed: Closed }
  | { readonly asks: 'look'; readonly wishes: Wishes }
  | { readonly asks: 'leave'; readonly look: number }
  | { readonly asks: 'outlines'; readonly grown: boolean }
);
export type ArtReply = { readonly id: number } & (
  | { readonly is: 'loaded' }
  | { readonly is: 'opened'; readonly shown: Blob; readonly width: number; readonly height: number }
  | { readonly is: 'broken' }
  | { readonly is: 'progress'; readonly share: number }
  | { readonly is: 'left' }
  | { readonly is: 'look'; readonly look: Look }
  | { readonly is: 'fault'; readonly fault: PictureFault }
  | { readonly is: 'outlines'; readonly loops: readonly Loop[] }
  | { readonly is: 'error'; readonly error: string }
);

/** Longest side of a preview, pixels. */
const PREVIEW = 640;

/** Highest number of small parts to list. */
const LISTED = 24;

let picture: Grey = { width: 0, height: 0, data: new Uint8Array() };
let design: Design | null = null;

function dustOf({ specks: { pinholes, specks }, mask: { perMm } }: Design): readonly Dust[] {
  const all = [
    ...pinholes.map((part) => ({ kind: 'pinhole', part }) as const),
    ...specks.map((part) => ({ kind: 'speck', part }) as const),
  ];
  return all
    .sort((a, b) => b.part.pixels - a.part.pixels)
    .slice(0, LISTED)
    .sort((a, b) => a.part.first - b.part.first)
    .map(({ kind, part }) => {
      const [x, y] = middleOf(part, perMm);
      return { kind, x, y, width: Math.sqrt((4 / Math.PI) * part.pixels) / perMm };
    });
}

function lookOf(own: Design): Look {
  const { flat, mask, grown, method, level, measured, specks, foreseen, mended, gapsClose } = own;
  return {
    method,
    level,
    measured,
    pinholes: specks.pinholes.length,
    specks: specks.specks.length,
    dust: dustOf(own),
    lost: foreseen.lost.length,
    lostGrown: mended.lost.length,
    left: foreseen.left,
    gapsClose,
    shares: sharesOf(mask),
    pictures: {
      flat: greyPicture(flat, PREVIEW),
      drawn: pictureOf(mask, PREVIEW),
      after: pictureOf(foreseen.after, PREVIEW),
      grown: pictureOf(grown, PREVIEW),
      mended: pictureOf(mended.after, PREVIEW),
    },
  };
}

/**
 * Opens a picture in the worker, so that the screen does not freeze. Of the data that a camera adds, only the
 * rotation is used.
 */
async function opened(id: number, { file, shrink }: Closed): Promise<ArtReply> {
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (!bitmap) return { id, is: 'broken' };
  const [width, height] = [Math.round(bitmap.width * shrink), Math.round(bitmap.height * shrink)];
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return { id, is: 'broken' };
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  picture = greyOf(context.getImageData(0, 0, width, height).data, width, height);
  design = null;
  return {
    id,
    is: 'opened',
    shown: await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 }),
    width,
    height,
  };
}

/** Ids of looks that are no longer wanted. */
const left = new Set<number>();
/** Gives waiting messages a chance to be handled. */
const turn = (): Promise<void> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      done();
    };
    port2.postMessage(null);
  });

async function looked(id: number, wishes: Wishes): Promise<ArtReply> {
  const parts = designParts(picture, wishes);
  for (;;) {
    const part = parts.next();
    if (part.done) {
      // after a fault the last good design stays
      if ('id' in part.value) return { id, is: 'fault', fault: part.value };
      design = part.value;
      return { id, is: 'look', look: lookOf(part.value) };
    }
    postMessage({ id, is: 'progress', share: part.value } satisfies ArtReply);
    await turn();
    if (left.delete(id)) return { id, is: 'left' };
  }
}

function answer(question: Exclude<ArtQuestion, { asks: 'leave' }>): ArtReply | Promise<ArtReply> {
  const { id } = question;
  switch (question.asks) {
    case 'load': {
      const { rgba, width, height } = question.picture;
      picture = greyOf(rgba, width, height);
      design = null;
      return { id, is: 'loaded' };
    }
    case 'open':
      return opened(id, question.closed);
    case 'outlines': {
      const own = design && (question.grown ? design.grown : design.mask);
      return { id, is: 'outlines', loops: own ? outlines(own) : [] };
    }
    case 'look':
      return looked(id, question.wishes);
  }
}

addEventListener('message', ({ data }: MessageEvent<ArtQuestion>) => {
  if (data.asks === 'leave') {
    left.add(data.look);
    return;
  }
  void (async () => {
    try {
      postMessage(await answer(data));
    } catch (error) {
      postMessage({ id: data.id, is: 'error', error: String(error) } satisfies ArtReply);
    }
  })();
});
