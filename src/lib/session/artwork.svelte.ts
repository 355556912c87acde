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

/** The piece that the picture is for. Lengths in mm. */
export interface PieceFace {
  readonly width: number;
  readonly height: number;
  readonly outline: 'rectangle' | 'disc';
  readonly undercut: number;
}

/**
 * What a picture shows: only the piece; the piece and its surroundings, with its corners marked; or the piece
 * beside a bank card.
 */
export type Shows = 'whole' | 'askew' | 'card';

type Own = Omit<Wishes, keyof PieceFace>;

/** Default size below which small parts are listed as dust, mm. */
const DUST = 0.2;
/** Undercuts that differ by less than this share count as equal. */
const SAME = 0.02;
/** First positions of the points, as shares of the picture's sides. */
const ABOUT: Readonly<Record<Exclude<Shows, 'whole'>, readonly Point[]>> = {
  askew: [
    [0.06, 0.06],
    [0.94, 0.06],
    [0.94, 0.94],
    [0.06, 0.94],
  ],
  // the card at the bottom, then the upper edge of the piece above it
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

/** Turns a picture into a mask: the picture, the maker's wishes and the result. */
export class Artwork {
  look = $state.raw<Look | null>(null);
  fault = $state.raw<PictureFault | BringInFault | null>(null);
  trouble = $state('');
  busy = $state(false);
  /** progress of the work, 0 to 1 */
  far = $state(0);
  /** address of the loaded picture, for moving points on it, and its size in pixels */
  shown = $state.raw<{ url: string; width: number; height: number } | null>(null);
  shows = $state<Shows>('whole');
  /**
   * points on the picture, pixels: the four corners of the piece; or the four of the card, then two of the
   * piece
   */
  points = $state.raw<readonly Point[]>([]);
  /** width of the piece, measured by the card, mm */
  across = $state<number | null>(null);
  /** outline drawn by hand, in shares of the piece's sides; null: the piece's own */
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
  /** the state from which the last good look was made */
  #good: Pick<Artwork, 'shows' | 'points' | 'across' | 'traced' | 'wishes'> | null = null;

  /**
   * @param face gives the piece and its undercut, from the width of the thinnest opening, mm; null while that
   *   is unknown
   */
  constructor(face: (gap: number | null) => PieceFace) {
    this.#face = face;
  }

  /** Loads a file. If it is not a picture, the last good one stays. */
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

  /** Shows the points in their first positions, or removes them. */
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

  /** Stops the current work and returns to the last good state. */
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

  /** Sets the piece's corners from the points. */
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
    // the undercut depends on the opening, whose width is known only now
    const { undercut } = this.#face(made.look.measured.gap?.width ?? null);
    if (Math.abs(undercut / face.undercut - 1) > SAME) await this.#look();
  }

  #forget(): void {
    if (this.shown) URL.revokeObjectURL(this.shown.url);
  }
}

/** The loaded picture as a file, without the other data in the original. */
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
