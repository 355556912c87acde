import type { Grey } from './raster.ts';

/*
 * A picture is divided into two tones by Otsu's level, either as it is, or after the light is evened out
 * between tiles that hold both tones. The second way is taken only when the light varies by more than 0.3 of
 * the contrast.
 */

/** How many pixels have each grey, 0 to 255. */
export function histogramOf(data: Uint8Array): Float64Array {
  const counts = new Float64Array(256);
  for (const grey of data) counts[grey] = (counts[grey] as number) + 1;
  return counts;
}

/** The darkest grey for which at least this share of the pixels is as dark or darker. */
export function quantileOf(counts: Float64Array, share: number): number {
  const total = counts.reduce((sum, one) => sum + one, 0);
  let passed = 0;
  for (let grey = 0; grey < 256; grey += 1) {
    passed += counts[grey] as number;
    if (passed >= share * total) return grey;
  }
  return 255;
}

/**
 * The grey that separates two tones best: greatest variance between them (Otsu, A threshold selection method
 * from gray-level histograms, IEEE Trans. SMC 9, 1979).
 * @returns dark tones are at most this grey
 */
export function otsu(counts: Float64Array): number {
  const total = counts.reduce((sum, one) => sum + one, 0);
  const moment = counts.reduce((sum, one, grey) => sum + grey * one, 0);
  let [best, most, below, dark] = [127, -1, 0, 0];
  for (let grey = 0; grey < 255; grey += 1) {
    below += counts[grey] as number;
    dark += grey * (counts[grey] as number);
    const above = total - below;
    if (below === 0 || above === 0) continue;
    const between = below * above * (dark / below - (moment - dark) / above) ** 2;
    // where many levels are equally good, rounding must not pick among them: the first is kept
    if (between > most * (1 + 1e-9)) {
      most = between;
      best = grey;
    }
  }
  return best;
}

/**
 * The two tones on either side of a level. Each is the median of its pixels, which the mixed pixels at edges
 * do not move.
 */
export function tonesOf(counts: Float64Array, level: number): readonly [dark: number, light: number] {
  const middle = (isOwn: (grey: number) => boolean): number => {
    const own = counts.map((count, grey) => (isOwn(grey) ? count : 0));
    // if one tone has no pixels, use the other
    return quantileOf(own.some((count) => count > 0) ? own : counts, 0.5);
  };
  return [middle((grey) => grey <= level), middle((grey) => grey > level)];
}

/** Side of a tile, pixels. Each tile gets a level of its own. */
const TILE = 48;
/** A tile with less contrast than this share of the whole picture's holds one tone only. */
const FLAT = 0.4;
/** A tone with less than this share of a tile's pixels is only an edge that reaches into it. */
const FEWEST = 0.12;

/** Darkest and lightest tone of each tile. Tiles of one tone take theirs from neighbours. */
function tiles({ width, height, data }: Grey, [dim, bright]: readonly [number, number]) {
  const whole = bright - dim;
  const [wide, high] = [Math.max(1, Math.round(width / TILE)), Math.max(1, Math.round(height / TILE))];
  const low = new Float64Array(wide * high).fill(dim);
  const top = new Float64Array(wide * high).fill(bright);
  const known = new Uint8Array(wide * high);
  const middle = new Float64Array(wide * high);
  for (let j = 0; j < high; j += 1)
    for (let i = 0; i < wide; i += 1) {
      const counts = new Float64Array(256);
      const [y0, y1] = [Math.floor((j * height) / high), Math.floor(((j + 1) * height) / high)];
      const [x0, x1] = [Math.floor((i * width) / wide), Math.floor(((i + 1) * width) / wide)];
      for (let y = y0; y < y1; y += 1)
        for (let x = x0; x < x1; x += 1) {
          const grey = data[y * width + x] as number;
          counts[grey] = (counts[grey] as number) + 1;
        }
      const n = j * wide + i;
      const level = otsu(counts);
      const [dark, light] = tonesOf(counts, level);
      middle[j * wide + i] = quantileOf(counts, 0.5);
      const below = counts.slice(0, level + 1).reduce((sum, one) => sum + one, 0);
      const all = counts.reduce((sum, one) => sum + one, 0);
      const isMixed = Math.min(below, all - below) >= FEWEST * all;
      if (!isMixed || light - dark < FLAT * whole) continue;
      known[n] = 1;
      low[n] = dark;
      top[n] = light;
    }
  spread(wide, high, known, middle, low, top);
  const range = (level: Float64Array): number => Math.max(...level) - Math.min(...level);
  return { wide, high, low, top, unevenness: Math.max(range(low), range(top)) / Math.max(1, whole) };
}

/**
 * A tile of one tone is used to follow the light as long as it differs from its neighbours by no more than
 * this.
 */
const DRIFT = 0.3;

/**
 * Fills unknown tiles from known neighbours, ring by ring. With none known, nothing changes. A tile of one
 * tone shows how the light continues.
 */
function spread(
  wide: number,
  high: number,
  known: Uint8Array,
  middle: Float64Array,
  low: Float64Array,
  top: Float64Array,
): void {
  if (!known.includes(1)) return;
  while (known.includes(0)) {
    const now = known.slice();
    for (let n = 0; n < known.length; n += 1) {
      if (known[n] === 1) continue;
      const [i, j] = [n % wide, Math.floor(n / wide)];
      const beside = [
        [i - 1, j],
        [i + 1, j],
        [i, j - 1],
        [i, j + 1],
      ]
        .filter(([a = -1, b = -1]) => a >= 0 && a < wide && b >= 0 && b < high)
        .map(([a = 0, b = 0]) => b * wide + a)
        .filter((m) => known[m] === 1);
      if (beside.length === 0) continue;
      const mean = (of: Float64Array): number =>
        beside.reduce((sum, m) => sum + (of[m] as number), 0) / beside.length;
      const [dark, light, own] = [mean(low), mean(top), middle[n] as number];
      const nearer = Math.abs(own - light) < Math.abs(own - dark) ? light : dark;
      const ratio = own / Math.max(1, nearer);
      const change = Math.abs(ratio - 1) < DRIFT ? ratio : 1;
      low[n] = dark * change;
      top[n] = light * change;
      now[n] = 1;
    }
    known.set(now);
  }
}

/**
 * Evens out the light: each place is stretched between the darkest and the lightest tone around it.
 * @returns a picture that is 0 where a place is as dark as the dark tone there, 255 where as light as the
 *   light tone; and the variation of the light over the contrast
 */
export function evened(grey: Grey): { readonly grey: Grey; readonly unevenness: number } {
  const { width, height, data } = grey;
  const counts = histogramOf(data);
  const { wide, high, low, top, unevenness } = tiles(grey, tonesOf(counts, otsu(counts)));
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y += 1) {
    const v = Math.min(high - 1, Math.max(0, ((y + 0.5) * high) / height - 0.5));
    const j = Math.min(high - 1, Math.floor(v));
    const [row, next, fy] = [j * wide, Math.min(high - 1, j + 1) * wide, v - j];
    for (let x = 0; x < width; x += 1) {
      const u = Math.min(wide - 1, Math.max(0, ((x + 0.5) * wide) / width - 0.5));
      const i = Math.min(wide - 1, Math.floor(u));
      const [right, fx] = [Math.min(wide - 1, i + 1), u - i];
      const at = (level: Float64Array): number =>
        (1 - fy) * ((1 - fx) * (level[row + i] as number) + fx * (level[row + right] as number)) +
        fy * ((1 - fx) * (level[next + i] as number) + fx * (level[next + right] as number));
      const [dark, light] = [at(low), at(top)];
      const n = y * width + x;
      out[n] = Math.round(
        255 * Math.min(1, Math.max(0, ((data[n] as number) - dark) / Math.max(1, light - dark))),
      );
    }
  }
  return { grey: { width, height, data: out }, unevenness };
}

/** One way to divide a picture into dark and light. */
export interface Parting {
  readonly method: 'whole' | 'local';
  /** the picture that is divided, evened out or as it was */
  readonly grey: Grey;
  readonly level: number;
  /** share of the pixels that are neither dark nor light; the lower, the better */
  readonly doubt: number;
}

function parting(method: Parting['method'], grey: Grey): Parting {
  const counts = histogramOf(grey.data);
  const level = otsu(counts);
  const [dark, light] = tonesOf(counts, level);
  const middle = (dark + light) / 2;
  const reach = (light - dark) / 4;
  let doubt = 0;
  for (let g = 0; g < 256; g += 1) if (Math.abs(g - middle) < reach) doubt += counts[g] as number;
  return { method, grey, level: Math.round(middle), doubt: doubt / grey.data.length };
}

/** With less contrast than this, in greys, a picture has only one tone. */
const LEAST_CONTRAST = 24;

/** Light that varies by more than this share of the contrast is evened out. */
const UNEVEN = 0.3;

/**
 * Both ways to divide a picture, the better one first.
 * @returns null when there are no two tones
 */
export function partings(grey: Grey): readonly [Parting, Parting] | null {
  const counts = histogramOf(grey.data);
  const [dark, light] = tonesOf(counts, otsu(counts));
  if (light - dark < LEAST_CONTRAST) return null;
  const whole = parting('whole', grey);
  const even = evened(grey);
  const local = parting('local', even.grey);
  return even.unevenness > UNEVEN && local.doubt < whole.doubt ? [local, whole] : [whole, local];
}

/** The nearest level that leaves pixels of both tones possible, of greys 0 to 255. */
export const usableLevel = (level: number): number => Math.min(254, Math.max(1, Math.round(level)));
