import { describe, expect, test } from 'vitest';
import { biteMap } from '../../../../src/lib/core/cell/bite-map.ts';
import { bandsOf, depthMapOf, profileOf } from '../../../../src/lib/core/field/depth-map.ts';
import type { DepthMap } from '../../../../src/lib/core/field/depth-map.ts';
import { si } from '../../../../src/lib/core/units/quantity.ts';
import { jobOf, pendant } from '../../../fixtures/jobs.ts';
import { faceOf, MM, problemOf, publishedCells, solved } from '../../../fixtures/field-cells.ts';
import type { PublishedCell } from '../../../fixtures/field-cells.ts';

const area = (map: DepthMap, n: number): number => {
  const wide = map.columns.length - 1;
  const [i, j] = [n % wide, Math.floor(n / wide)];
  const size = (lines: readonly number[], at: number) => (lines[at + 1] as number) - (lines[at] as number);
  return size(map.columns, i) * size(map.rows, j);
};
const total = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0);

describe('a depth map', () => {
  const cell = publishedCells['OFF20'] as PublishedCell;
  const faces = faceOf(solved(problemOf(cell, 2 * MM)), 'anode', 'plus');
  /** the least rectangle about faces, wider by so many metres on every side */
  const about = (own: typeof faces, more = 0) => ({
    y0: Math.min(...own.map(({ y, width }) => y - width / 2)) - more,
    y1: Math.max(...own.map(({ y, width }) => y + width / 2)) + more,
    z0: Math.min(...own.map(({ z, height }) => z - height / 2)) - more,
    z1: Math.max(...own.map(({ z, height }) => z + height / 2)) + more,
  });
  const map = depthMapOf(faces, about(faces));
  test('lies on the bare window, and its mean is one', () => {
    expect(map.columns.at(-1)).toBeCloseTo(0.028, 9);
    expect(map.rows.at(-1)).toBeCloseTo(0.02, 9);
    const weights = map.relative.map((_, n) => area(map, n));
    expect(total(map.relative.map((one, n) => one * (weights[n] as number))) / total(weights)).toBeCloseTo(
      1,
      4,
    );
  });
  test('keeps the place of what lies between masked rows, columns and rims', () => {
    const ys = [...new Set(faces.map(({ y }) => y))].sort((a, b) => a - b);
    const striped = faces.filter(({ y }) => ys.indexOf(y) % 3 === 1);
    const own = depthMapOf(striped, about(faces, 5 * MM));
    expect(own.columns.at(-1)).toBeCloseTo(0.038, 9);
    expect(own.rows.at(-1)).toBeCloseTo(0.03, 9);
    const wide = own.columns.length - 1;
    const bare = own.relative.map((_, n) => n).filter((n) => own.relative[n] !== 0);
    expect(total(bare.map((n) => area(own, n)))).toBeCloseTo(total(striped.map((face) => face.area)), 12);
    const middles = new Set(
      bare.map((n) => ((own.columns[n % wide] ?? NaN) + (own.columns[(n % wide) + 1] ?? NaN)) / 2),
    );
    const wanted = new Set(striped.map(({ y }) => y - about(faces, 5 * MM).y0));
    expect([...middles]).toEqual([...wanted].map((one) => expect.closeTo(one, 9) as number));
  });
  test('is deeper on the side of a plate that is shifted', () => {
    const wide = map.columns.length - 1;
    const column = (i: number) => total(map.relative.filter((_, n) => n % wide === i));
    expect(column(wide - 1)).toBeGreaterThan(column(0));
  });
  test('is drawn in at most seven bands between round numbers that cover all bare metal once', () => {
    const bands = bandsOf(map, 60);
    expect(bands.length).toBeGreaterThan(2);
    expect(bands.length).toBeLessThanOrEqual(7);
    expect(total(bands.map(({ share }) => share))).toBeCloseTo(1, 9);
    const drawn = total(bands.flatMap(({ runs }) => runs.map(({ width, height }) => width * height)));
    expect(drawn).toBeCloseTo(0.028 * 0.02, 12);
    expect([bands[0]?.from, bands.at(-1)?.to]).toEqual([null, null]);
    for (const [n, { from }] of bands.entries())
      if (n > 0) expect(from).toBeCloseTo(bands[n - 1]?.to ?? NaN, 9);
  });
  test('has a section through its middle, masked places at no depth', () => {
    const grid = {
      columns: [0, 1, 2, 3],
      rows: [0, 1, 2, 3],
      relative: [0, 0, 1, 1.5, 0, 0.5, 0, 0, 0],
    };
    const { at, steps } = profileOf(grid);
    expect(at).toBe(1.5);
    expect(steps).toEqual([
      { from: 0, to: 1, relative: 1.5 },
      { from: 1, to: 2, relative: 0 },
      { from: 2, to: 3, relative: 0.5 },
    ]);
  });
  test('leaves what is masked out', () => {
    const masked = { columns: [0, 1, 2, 3], rows: [0, 1], relative: [1, 0, 1] };
    const [band] = bandsOf(masked, 50);
    expect(band?.runs).toEqual([
      { x: 0, y: 0, width: 1, height: 1 },
      { x: 2, y: 0, width: 1, height: 1 },
    ]);
    expect(bandsOf({ ...masked, relative: [0, 0, 0] }, 50)).toEqual([]);
  });
});

describe('the map of a job', () => {
  const job = jobOf(pendant());
  const open = job.piece.openArea ?? si<'area'>(1e-4);
  test('says how far its grid may be off, and tells how far it is', () => {
    const told: number[] = [];
    const map = biteMap(job, open, 2e-3, { shouldStop: (share) => told.push(share) < 0 });
    expect(map?.error).toBeGreaterThan(0);
    expect(map?.error).toBeLessThan(0.05);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBeGreaterThan(0.5);
  });
  test('is none when it is called off, and for a jug', () => {
    expect(biteMap(job, open, 2e-3, { shouldStop: () => true })).toBeNull();
    const jug = { kind: 'jug', water: si<'volume'>(5e-4) } as const;
    expect(biteMap({ ...job, tub: jug }, open, 2e-3)).toBeNull();
  });
});
