import { isNothing } from './problem.ts';
import type { Bare, Electrode, FieldProblem, Plate, Rect } from './problem.ts';

/** Why a problem cannot be solved as it stands. Lengths in m. */
export type FieldFault =
  | { readonly id: 'outsideTub'; readonly plate: number; readonly found: number; readonly most: number }
  | { readonly id: 'platesTouch'; readonly plate: number; readonly other: number; readonly least: number }
  | { readonly id: 'nothingBare'; readonly electrode: Electrode }
  | { readonly id: 'maskTooFine'; readonly plate: number; readonly found: number; readonly least: number }
  | { readonly id: 'notPositive'; readonly field: string; readonly found: number }
  /** not a number, negative, or an end before its beginning */
  | { readonly id: 'badLength'; readonly plate: number; readonly field: string; readonly found: number }
  | {
      readonly id: 'bareOutsidePlate';
      readonly plate: number;
      readonly found: number;
      readonly most: number;
    };

/** Smallest side of a mask's bare parts, m. */
function finest({ outline }: Plate, bare: Bare): number {
  if (bare.kind === 'rects')
    return Math.min(...bare.rects.flatMap(({ y0, y1, z0, z1 }) => [y1 - y0, z1 - z0]));
  if (bare.kind === 'disc') return 2 * bare.radius;
  if (bare.kind === 'bitmap')
    // a bitmap may have single pixels: it is enough that no cell holds more than one
    return Math.min((outline.y1 - outline.y0) / bare.columns, (outline.z1 - outline.z0) / bare.rows);
  return Infinity;
}

const overlaps = (a: Rect, b: Rect): boolean => a.y0 < b.y1 && b.y0 < a.y1 && a.z0 < b.z1 && b.z0 < a.z1;

/** Shorter lengths count as 0: they come from rounding what was typed in mm. */
const NOTHING = 1e-9;

const rectsOf = (bare: Bare): readonly Rect[] => {
  if (bare.kind === 'rects') return bare.rects;
  if (bare.kind !== 'disc') return [];
  const { y, z, radius } = bare;
  return [{ y0: y - radius, y1: y + radius, z0: z - radius, z1: z + radius }];
};

/** Invalid lengths of a plate. Further checks would not make sense with them. */
function badLengths({ x, thickness, mask = 0, outline, bare }: Plate, plate: number): readonly FieldFault[] {
  const wide = ({ y0, y1, z0, z1 }: Rect): readonly number[] => [y1 - y0, z1 - z0, y0, z0];
  const isRect = (rect: Rect): boolean =>
    wide(rect).every(Number.isFinite) && rect.y1 > rect.y0 && rect.z1 > rect.z0;
  const faults: FieldFault[] = Object.entries({ x, thickness, mask })
    .filter(([field, found]) => !Number.isFinite(found) || (found < 0 && field !== 'x'))
    .map(([field, found]) => ({ id: 'badLength', plate, field, found }));
  const own = { outline: [outline], minus: rectsOf(bare.minus), plus: rectsOf(bare.plus) };
  for (const [field, rects] of Object.entries(own))
    for (const rect of rects)
      if (!isRect(rect)) faults.push({ id: 'badLength', plate, field, found: Math.min(...wide(rect)) });
  return faults;
}

/** How far a bare part reaches beyond its plate, m; 0 or less when it lies within. */
const beyond = (part: Rect, outline: Rect): number =>
  Math.max(outline.y0 - part.y0, part.y1 - outline.y1, outline.z0 - part.z0, part.z1 - outline.z1);

/** All faults of a problem, the first cause first; empty when it can be solved. */
export function faultsOf({ box, plates, spacing, conductivity, volts }: FieldProblem): readonly FieldFault[] {
  const faults: FieldFault[] = Object.entries({ ...box, spacing, conductivity, volts })
    .filter(([, found]) => !(found > 0 && Number.isFinite(found)))
    .map(([field, found]) => ({ id: 'notPositive', field, found }));
  faults.push(...plates.flatMap(badLengths));
  if (faults.length > 0) return faults;
  plates.forEach((plate, n) => {
    const { outline, x, thickness, mask = 0 } = plate;
    for (const [found, most] of [
      [outline.y1, box.width],
      [outline.z1, box.fill],
      [x + thickness + (isNothing(plate.bare.plus) ? 0 : mask), box.length],
      [-outline.y0, 0],
      [-outline.z0, 0],
      [-x, 0],
    ] as const)
      if (found > most + NOTHING) faults.push({ id: 'outsideTub', plate: n, found, most });
    for (const bare of Object.values(plate.bare)) {
      const found = finest(plate, bare);
      if (found < spacing / 2) faults.push({ id: 'maskTooFine', plate: n, found, least: spacing / 2 });
      const parts = bare.kind === 'rects' ? bare.rects : [];
      const most = Math.max(0, ...parts.map((part) => beyond(part, outline)));
      if (most > NOTHING) faults.push({ id: 'bareOutsidePlate', plate: n, found: most, most: 0 });
    }
    plates.slice(n + 1).forEach((other, m) => {
      const gap = Math.max(other.x - (x + thickness), x - (other.x + other.thickness));
      if (overlaps(outline, other.outline) && gap < spacing)
        faults.push({ id: 'platesTouch', plate: n, other: n + 1 + m, least: spacing });
    });
  });
  for (const electrode of ['anode', 'cathode'] as const) {
    const own = plates.filter((plate) => plate.electrode === electrode);
    if (own.every(({ bare }) => isNothing(bare.minus) && isNothing(bare.plus)))
      faults.push({ id: 'nothingBare', electrode });
  }
  return faults;
}
