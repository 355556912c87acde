import { designOf, pictureOf } from '../core/mask/design.ts';
import type { Design, Wishes } from '../core/mask/design.ts';
import type { Measured } from '../core/mask/measure.ts';
import { outlines } from '../core/mask/outline.ts';
import type { Loop } from '../core/mask/outline.ts';
import { greyOf } from '../core/mask/raster.ts';
import type { Grey, PictureFault } from '../core/mask/raster.ts';
import { sharesOf } from '../core/mask/shares.ts';
import type { Shares } from '../core/mask/shares.ts';

export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/** What a screen needs of a design. Lengths in mm. */
export interface Look {
  readonly method: Design['method'];
  readonly level: number;
  readonly measured: Measured;
  readonly pinholes: number;
  readonly specks: number;
  /** parts of the resist lost at the wanted depth, as drawn and with the resist grown */
  readonly lost: number;
  readonly lostGrown: number;
  readonly left: number;
  readonly gapsClose: boolean;
  readonly shares: Shares;
  /** as drawn, after the bite, grown, grown after the bite */
  readonly pictures: Readonly<Record<'drawn' | 'after' | 'grown' | 'mended', Pixels>>;
}

export type ArtQuestion = { readonly id: number } & (
  | { readonly asks: 'load'; readonly picture: Pixels }
  | { readonly asks: 'look'; readonly wishes: Wishes }
  | { readonly asks: 'outlines'; readonly grown: boolean }
);
export type ArtReply = { readonly id: number } & (
  | { readonly is: 'loaded' }
  | { readonly is: 'look'; readonly look: Look }
  | { readonly is: 'fault'; readonly fault: PictureFault }
  | { readonly is: 'outlines'; readonly loops: readonly Loop[] }
  | { readonly is: 'error'; readonly error: string }
);

/** Side of a preview, pixels. */
const PREVIEW = 640;

let picture: Grey = { width: 0, height: 0, data: new Uint8Array() };
let design: Design | null = null;

function lookOf(own: Design): Look {
  const { mask, grown, method, level, measured, specks, foreseen, mended, gapsClose } = own;
  return {
    method,
    level,
    measured,
    pinholes: specks.pinholes.length,
    specks: specks.specks.length,
    lost: foreseen.lost.length,
    lostGrown: mended.lost.length,
    left: foreseen.left,
    gapsClose,
    shares: sharesOf(mask),
    pictures: {
      drawn: pictureOf(mask, PREVIEW),
      after: pictureOf(foreseen.after, PREVIEW),
      grown: pictureOf(grown, PREVIEW),
      mended: pictureOf(mended.after, PREVIEW),
    },
  };
}

function answer(question: ArtQuestion): ArtReply {
  const { id } = question;
  if (question.asks === 'load') {
    const { rgba, width, height } = question.picture;
    picture = greyOf(rgba, width, height);
    design = null;
    return { id, is: 'loaded' };
  }
  if (question.asks === 'outlines') {
    const own = design && (question.grown ? design.grown : design.mask);
    return { id, is: 'outlines', loops: own ? outlines(own) : [] };
  }
  const made = designOf(picture, question.wishes);
  // the last good one stays
  if ('id' in made) return { id, is: 'fault', fault: made };
  design = made;
  return { id, is: 'look', look: lookOf(made) };
}

addEventListener('message', ({ data }: MessageEvent<ArtQuestion>) => {
  try {
    postMessage(answer(data));
  } catch (error) {
    postMessage({ id: data.id, is: 'error', error: String(error) } satisfies ArtReply);
  }
});
