import type { FaceCurrent } from './solve.ts';

/** Width over which the bite is averaged before comparing, m: nobody measures a depth right at an edge. */
export const averagingWindow = 2e-3;

/** The length of a cell that lies within a window. */
const overlap = (centre: number, size: number, at: number, window: number): number =>
  Math.max(0, Math.min(centre + size / 2, at + window / 2) - Math.max(centre - size / 2, at - window / 2));

/**
 * Current densities, each averaged over a window along its own side of its own plate.
 * @param window m; 0 leaves them unchanged
 * @returns A/m², by face
 */
export function averaged(faces: readonly FaceCurrent[], window = averagingWindow): Float64Array {
  const means = Float64Array.from(faces, ({ density }) => density);
  if (window === 0) return means;
  const sheets = new Map<string, number[]>();
  faces.forEach(({ plate, side }, n) => {
    const key = `${plate} ${side}`;
    const own = sheets.get(key);
    if (own) own.push(n);
    else sheets.set(key, [n]);
  });
  for (const own of sheets.values()) {
    const rows = new Map<number, number[]>();
    for (const n of own) {
      const { z } = faces[n] as FaceCurrent;
      const row = rows.get(z);
      if (row) row.push(n);
      else rows.set(z, [n]);
    }
    for (const n of own) {
      const at = faces[n] as FaceCurrent;
      let [sum, area] = [0, 0];
      for (const [z, row] of rows) {
        const first = faces[row[0] as number] as FaceCurrent;
        const high = overlap(z, first.height, at.z, window);
        if (high === 0) continue;
        for (const m of row) {
          const face = faces[m] as FaceCurrent;
          const part = face.bareShare * high * overlap(face.y, face.width, at.y, window);
          sum += part * face.density;
          area += part;
        }
      }
      means[n] = sum / area;
    }
  }
  return means;
}

/** The current density that this share of the area stays below. */
function areaQuantile(densities: Float64Array, areas: readonly number[], share: number): number {
  const order = [...densities.keys()].sort((a, b) => (densities[a] as number) - (densities[b] as number));
  const total = areas.reduce((sum, area) => sum + area, 0);
  let passed = 0;
  for (const n of order) {
    passed += areas[n] as number;
    if (passed >= share * total) return densities[n] as number;
  }
  return densities[order.at(-1) as number] as number;
}

/**
 * Evenness of a bite: area-weighted 5th over 95th percentile of the current density.
 * @param window m over which densities are averaged first
 * @returns share, 1 for an even bite
 */
export function evennessOf(faces: readonly FaceCurrent[], window = averagingWindow): number {
  const means = averaged(faces, window);
  const areas = faces.map(({ area }) => area);
  return areaQuantile(means, areas, 0.05) / areaQuantile(means, areas, 0.95);
}
