import type { Point } from './perspective.ts';

/** Eight points on the ellipse that fills the picture. The maker moves them from there. */
export const roundedOutline = (): readonly Point[] =>
  Array.from({ length: 8 }, (_, n) => {
    const angle = (Math.PI * (n - 2)) / 4;
    return [0.5 + 0.5 * Math.cos(angle), 0.5 + 0.5 * Math.sin(angle)] as const;
  });

const next = (points: readonly Point[], n: number): Point => points[(n + 1) % points.length] as Point;

/** Adds a point in the middle of the longest side. */
export function onePointMore(points: readonly Point[]): readonly Point[] {
  const lengths = points.map(([x, y], n) => Math.hypot(next(points, n)[0] - x, next(points, n)[1] - y));
  const longest = lengths.indexOf(Math.max(...lengths));
  const [a, b] = [points[longest] as Point, next(points, longest)];
  return points.toSpliced(longest + 1, 0, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
}

/**
 * Removes the point that matters least: the one whose triangle with its neighbours is smallest. Three always
 * remain.
 */
export function onePointFewer(points: readonly Point[]): readonly Point[] {
  if (points.length <= 3) return points;
  const areas = points.map(([x, y], n) => {
    const [before, after] = [points.at(n - 1) as Point, next(points, n)];
    return Math.abs((before[0] - x) * (after[1] - y) - (after[0] - x) * (before[1] - y));
  });
  return points.toSpliced(areas.indexOf(Math.min(...areas)), 1);
}
