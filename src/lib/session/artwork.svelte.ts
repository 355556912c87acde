import { bankCard } from '../core/facts/limits.ts';
import type { Wishes } from '../core/mask/design.ts';
import type { Outline } from '../core/mask/mask.ts';
import type { Loop } from '../core/mask/outline.ts';
import { cornersBeside, cornersFault } from '../core/mask/perspective.ts';
import type { Corners, Point } from '../core/mask/perspective.ts';
import type { BringInFault, PictureFault } from '../core/mask/raster.ts';
import { startArtist } from '../work/artist.ts';
import type { Look, Pixels } from '../work/art.worker.ts';
import { bringIn } from './bring-in.ts';

/** The piece that a picture is of. Lengths in mm. */
export interface PieceFace {
  readonly width: number;
  readonly height: number;
  readonly outline: 'rectangle' | 'disc';
  readonly undercut: number;
}

/** What a picture shows: the piece alone; more, told apart by its corners; or the piece beside a bank card. */
export type Shows = 'whole' | 'askew' | 'card';

type Own = Omit<Wishes, keyof PieceFace>;

/** Dust below this width is listed unless the maker says otherwise, mm. */
const DUST = 0.2;
/** Undercuts that differ by less are one. */
const SAME = 0.02;
/** Points as shares of the picture's sides, where they stand before they are moved. */
const ABOUT: Readonly<Record<Exclude<Shows, 'whole'>, readonly Point[]>> = {
  askew: [
    [0.06, 0.06],
    [0.94, 0.06],
    [0.94, 0.94],
    [0.06, 0.94],
  ],
  // the card below, then the upper edge of the piece above it
  card: [
    [0.1, 0.55],
    [0.6, 0.55],
    [0.6, 0.9],
    [0.1, 0.9],
    [0.2, 0.15],
    [0.6, 0.15],
  ],
};
const CARD = [bankCard.width.value, bankCard.height.value] as const;

/** A picture on its way to a mask: what was brought in, what is wished of it, and what came of it. */
export class Artwork {
  look = $state.raw<Look | null>(null);
  fault = $state.raw<PictureFault | BringInFault | null>(null);
  trouble = $state('');
  busy = $state(false);
  /** how far the work is, 0 to 1 */
  far = $state(0);
  /** address of what was brought in, to move points on; and its size, pixels */
  shown = $state.raw<{ url: string; width: number; height: number } | null>(null);
  shows = $state<Shows>('whole');
  /** points on the picture, pixels: four of the piece; or four of the card, then two of the piece */
  points = $state.raw<readonly Point[]>([]);
  /** width of the piece by the card, mm */
  across = $state<number | null>(null);
  /** outline drawn by hand, shares of the piece's sides; null: as the piece is */
  traced = $state.raw<readonly Point[] | null>(null);
  wishes = $state.raw<Own>({
    corners: null,
    darkIs: 'resist',
    method: null,
    level: null,
    least: DUST,
    clean: true,
    keep: [],
  });

  readonly #artist = startArtist();
  readonly #face: (gap: number | null) => PieceFace;
  #works = 0;
  /** what the last good look was made of */
  #good: Pick<Artwork, 'shows' | 'points' | 'across' | 'traced' | 'wishes'> | null = null;

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
      const shown =
        'closed' in opened ? await this.#artist.open(opened.closed) : await this.#load(opened.picture);
      if (!shown) {
        this.fault = { id: 'broken' };
        return;
      }
      this.#forget();
      this.shown = { ...shown, url: URL.createObjectURL(shown.file) };
      this.shows = 'whole';
      this.traced = null;
      this.wishes = { ...this.wishes, corners: null, method: null, level: null, keep: [] };
      await this.#look();
    });
  }

  wish(change: Partial<Own>): Promise<void> {
    this.wishes = { ...this.wishes, ...change };
    return this.#work(() => this.#look());
  }

  trace(points: readonly Point[] | null): Promise<void> {
    this.traced = points;
    return this.#work(() => this.#look());
  }

  /** Puts points where they can be moved from, or takes them away. */
  square(shows: Shows): Promise<void> {
    const { width, height } = this.shown ?? { width: 0, height: 0 };
    this.shows = shows;
    this.points = shows === 'whole' ? [] : ABOUT[shows].map(([x, y]) => [x * width, y * height] as const);
    return this.#squared();
  }

  move(which: number, place: Point): Promise<void> {
    this.points = this.points.map((own, n) => (n === which ? place : own));
    return this.#squared();
  }

  /** Leaves what is being worked on: the last good state comes back. */
  leave(): void {
    this.#artist.leave();
    if (this.#good) Object.assign(this, this.#good);
  }

  outlines(grown: boolean): Promise<readonly Loop[]> {
    return this.#artist.outlines(grown);
  }

  close(): void {
    this.#artist.close();
    this.#forget();
  }

  /** The piece's corners by the points. */
  async #squared(): Promise<void> {
    const [a, b, c, d, left, right] = this.points;
    let corners: Corners | null = a && b && c && d ? [a, b, c, d] : null;
    this.across = null;
    if (corners && left && right) {
      const fault = cornersFault(corners);
      if (fault) {
        this.fault = fault;
        return;
      }
      const { width, height } = this.#face(null);
      ({ corners, across: this.across } = cornersBeside(corners, CARD, [left, right], width, height));
    }
    await this.wish({ corners, method: null, level: null, keep: [] });
  }

  async #load(picture: Pixels): Promise<{ file: Blob; width: number; height: number }> {
    const { width, height } = picture;
    const file = await asFile(picture);
    await this.#artist.load(picture);
    return { file, width, height };
  }

  async #work(act: () => Promise<void>): Promise<void> {
    this.#works += 1;
    this.busy = true;
    this.far = 0;
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
    const outline: Outline = this.traced ?? face.outline;
    const made = await this.#artist.look({ ...this.wishes, ...face, outline }, (share) => {
      this.far = share;
    });
    if (made === null) return;
    if ('fault' in made) {
      this.fault = made.fault;
      return;
    }
    this.look = made.look;
    this.fault = null;
    const { shows, points, across, traced, wishes } = this;
    this.#good = { shows, points, across, traced, wishes };
    // how far it creeps depends on the opening, which has only now been measured
    const { undercut } = this.#face(made.look.measured.gap?.width ?? null);
    if (Math.abs(undercut / face.undercut - 1) > SAME) await this.#look();
  }

  #forget(): void {
    if (this.shown) URL.revokeObjectURL(this.shown.url);
  }
}

/** What was brought in, without what else its file held. */
async function asFile({ rgba, width, height }: Pixels): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.putImageData(new ImageData(rgba, width, height), 0, 0);
  const blob = await new Promise<Blob | null>((done) => {
    canvas.toBlob(done, 'image/jpeg', 0.85);
  });
  if (!blob) throw new Error('the picture could not be kept');
  return blob;
}
