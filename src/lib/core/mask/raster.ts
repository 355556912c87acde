/** A picture in grey, row by row from its upper left corner. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  /** 0 black to 255 white */
  readonly data: Uint8Array;
}

/** A design on the metal, row by row from its upper left corner. */
export interface Mask {
  readonly width: number;
  readonly height: number;
  /** pixels in a millimetre */
  readonly perMm: number;
  /** 1 where metal is bare, 0 under resist or beyond the piece */
  readonly bare: Uint8Array;
  /** bare part of each pixel, 0 to 255: at an edge the paper's grey tells more than yes or no */
  readonly cover: Uint8Array;
  /** 1 on the piece, 0 beyond its outline */
  readonly piece: Uint8Array;
}

/** Largest side and number of pixels that are worked on. */
export const LIMITS = { side: 20_000, pixels: 12_000_000 } as const;

/** Why a file gives no picture. */
export type BringInFault =
  | { readonly id: 'notAPicture' }
  | { readonly id: 'tooLarge'; readonly found: number; readonly most: number }
  | { readonly id: 'bomb' }
  | { readonly id: 'broken' };

/** Why a picture cannot be used. */
export type PictureFault =
  | { readonly id: 'tooLarge'; readonly found: number; readonly most: number }
  | { readonly id: 'blank' }
  | { readonly id: 'oneTone' }
  | { readonly id: 'crossed' }
  | { readonly id: 'flat' };

/** How much a picture must be shrunk to be worked on: 1 when not at all. */
export const shrinkOf = (width: number, height: number): number =>
  Math.min(1, Math.sqrt(LIMITS.pixels / (width * height)));

/** Grey by the eye's weights (ITU-R BT.709), on white where it is transparent. @param rgba 4·n bytes */
export function greyOf(rgba: Uint8ClampedArray, width: number, height: number): Grey {
  const data = new Uint8Array(width * height);
  for (let n = 0, at = 0; n < data.length; n += 1, at += 4) {
    const alpha = (rgba[at + 3] as number) / 255;
    const light =
      0.2126 * (rgba[at] as number) + 0.7152 * (rgba[at + 1] as number) + 0.0722 * (rgba[at + 2] as number);
    data[n] = Math.round(255 + alpha * (light - 255));
  }
  return { width, height, data };
}
