/** Larger than any squared distance in a picture: no pixel of the other kind was found. */
export const FAR = 2 ** 30;

/**
 * Squared distance, in pixels, from the centre of each pixel that is `inside` to the nearest that is not. It
 * is exact, and its time grows in proportion to the pixels. The surroundings of the picture do not count.
 * Meijster, Roerdink & Hesselink, A general algorithm for computing distance transforms in linear time
 * (2000).
 * @param inside 1 or 0, row by row
 * @returns integers; 0 outside, FAR where there is no outside
 */
export function squaredDistances(inside: Uint8Array, width: number, height: number): Int32Array {
  const squared = new Int32Array(inside.length);
  // go down and up all columns at once, row by row, because memory is read fastest that way
  const none = width + height;
  for (let x = 0; x < width; x += 1) squared[x] = inside[x] === 0 ? 0 : none;
  for (let n = width; n < inside.length; n += 1)
    squared[n] = inside[n] === 0 ? 0 : Math.min(none, (squared[n - width] as number) + 1);
  for (let n = inside.length - width - 1; n >= 0; n -= 1) {
    const below = (squared[n + width] as number) + 1;
    if (below < (squared[n] as number)) squared[n] = below;
  }
  // along each row: the lower envelope of the columns' parabolas
  const up = new Float64Array(width);
  const tip = new Int32Array(width);
  const from = new Int32Array(width);
  for (let row = 0; row < inside.length; row += width) {
    let last = -1;
    for (let x = 0; x < width; x += 1) {
      const g = squared[row + x] as number;
      if (g === none) {
        up[x] = FAR;
        continue;
      }
      const here = g * g;
      up[x] = here;
      let start = 0;
      while (last >= 0) {
        const t = tip[last] as number;
        // first column where this parabola is below the last one
        start = Math.floor((x * x - t * t + here - (up[t] as number)) / (2 * (x - t))) + 1;
        if (start > (from[last] as number)) break;
        last -= 1;
      }
      if (last < 0) start = 0;
      if (start >= width) continue;
      last += 1;
      tip[last] = x;
      from[last] = start;
    }
    if (last < 0) {
      squared.fill(FAR, row, row + width);
      continue;
    }
    for (let x = width - 1, at = last; x >= 0; x -= 1) {
      while ((from[at] as number) > x) at -= 1;
      const t = tip[at] as number;
      squared[row + x] = (x - t) * (x - t) + (up[t] as number);
    }
  }
  return squared;
}
