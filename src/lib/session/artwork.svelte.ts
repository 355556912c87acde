import type { Wishes } from '../core/mask/design.ts';
import type { Loop } from '../core/mask/outline.ts';
import type { Point } from '../core/mask/perspective.ts';
import type { PictureFault } from '../core/mask/raster.ts';
import { startArtist } from '../work/artist.ts';
import type { Look, Pixels } from '../work/art.worker.ts';
import { bringIn } from './bring-in.ts';
import type { BringInFault } from './bring-in.ts';

/** The piece that a picture is of. Lengths in mm. */
export interface PieceFace {
  readonly width: number;
  readonly height: number;
  readonly outline: Wishes['outline'];
  readonly undercut: number;
}

/** Dust below this width is listed unless the maker says otherwise, mm. */
const DUST = 0.2;
/** Undercuts that differ by less are one. */
const SAME = 0.02;
/** Of the picture's sides: where the corners stand before they are moved. */
const INSET = 0.06;

/** A picture on its way to a mask: what was brought in, what is wished of it, and what came of it. */
export class Artwork {
  look = $state.raw<Look | null>(null);
  fault = $state.raw<PictureFault | BringInFault | null>(null);
  trouble = $state('');
  busy = $state(false);
  /** address of what was brought in, to tap corners on; and its size, pixels */
  shown = $state.raw<{ url: string; width: number; height: number } | null>(null);
  wishes = $state.raw<Omit<Wishes, keyof PieceFace>>({
    corners: null,
    darkIs: 'resist',
    method: null,
    level: null,
    least: DUST,
    clean: true,
  });

  readonly #artist = startArtist();
  readonly #face: (gap: number | null) => PieceFace;
  #works = 0;

  /** @param face the piece, its undercut by the width of the thinnest opening, mm; null while none is known */
  constructor(face: (gap: number | null) => PieceFace) {
    this.#face = face;
  }

  /** Takes a file; the last good picture stays when it is none. */
  take(file: Blob): Promise<void> {
    return this.#work(async () => {
      const opened = await bringIn(file);
      if ('fault' in opened) {
        this.fault = opened.fault;
        return;
      }
      const { width, height } = opened.picture;
      const url = await addressOf(opened.picture);
      await this.#artist.load(opened.picture);
      this.#forget();
      this.shown = { url, width, height };
      this.wishes = { ...this.wishes, corners: null, method: null, level: null };
      await this.#look();
    });
  }

  wish(change: Partial<Omit<Wishes, keyof PieceFace>>): Promise<void> {
    this.wishes = { ...this.wishes, ...change };
    return this.#work(() => this.#look());
  }

  /** Puts the corners where they can be moved from, or takes them away. */
  async square(isAskew: boolean): Promise<void> {
    if (!this.shown) return;
    const { width, height } = this.shown;
    const [x, y] = [INSET * width, INSET * height];
    const corners = [
      [x, y],
      [width - x, y],
      [width - x, height - y],
      [x, height - y],
    ] as const;
    await this.wish({ corners: isAskew ? corners : null, method: null, level: null });
  }

  async corner(which: number, place: Point): Promise<void> {
    const { corners } = this.wishes;
    if (!corners) return;
    const [a, b, c, d] = corners.map((own, n) => (n === which ? place : own));
    if (a && b && c && d) await this.wish({ corners: [a, b, c, d], method: null, level: null });
  }

  outlines(grown: boolean): Promise<readonly Loop[]> {
    return this.#artist.outlines(grown);
  }

  close(): void {
    this.#artist.close();
    this.#forget();
  }

  async #work(act: () => Promise<void>): Promise<void> {
    this.#works += 1;
    this.busy = true;
    this.fault = null;
    this.trouble = '';
    try {
      await act();
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    } finally {
      this.#works -= 1;
      this.busy = this.#works > 0;
    }
  }

  async #look(): Promise<void> {
    const face = this.#face(this.look?.measured.gap?.width ?? null);
    const made = await this.#artist.look({ ...this.wishes, ...face });
    if (made === null) return;
    if ('fault' in made) {
      this.fault = made.fault;
      return;
    }
    this.look = made.look;
    this.fault = null;
    // how far it creeps depends on the opening, which has only now been measured
    const { undercut } = this.#face(made.look.measured.gap?.width ?? null);
    if (Math.abs(undercut / face.undercut - 1) > SAME) await this.#look();
  }

  #forget(): void {
    if (this.shown) URL.revokeObjectURL(this.shown.url);
  }
}

/** What was brought in, without what else its file held. */
async function addressOf({ rgba, width, height }: Pixels): Promise<string> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.putImageData(new ImageData(rgba, width, height), 0, 0);
  const blob = await new Promise<Blob | null>((done) => {
    canvas.toBlob(done, 'image/jpeg', 0.85);
  });
  if (!blob) throw new Error('the picture could not be kept');
  return URL.createObjectURL(blob);
}
