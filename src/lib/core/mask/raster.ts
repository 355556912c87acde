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
  /** bare share of each pixel, 0 to 255: at an edge this is more exact than bare or not */
  readonly cover: Uint8Array;
  /** 1 on the piece, 0 outside its outline */
  readonly piece: Uint8Array;
}

/** Largest side and largest number of pixels that are accepted. */
export const LIMITS = { side: 20_000, pixels: 12_000_000 } as const;

/** Why a file could not be read as a picture. */
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

/** Factor by which a picture must be shrunk before work; 1 when it need not be. */
export const shrinkOf = (width: number, height: number): number =>
  Math.min(1, Math.sqrt(LIMITS.pixels / (width * height)));

/** Grey weighted as the eye sees it (ITU-R BT.709); transparent parts become white. @param rgba 4·n bytes */
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
