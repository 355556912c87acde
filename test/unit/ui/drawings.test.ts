import { describe, expect, test } from 'vitest';
import { enlargement, sectionOf, sectionTop } from '../../../src/lib/ui/drawing/section-path.ts';
import { outlineOf } from '../../../src/lib/ui/drawing/length.ts';
import { layOutTub } from '../../../src/lib/ui/drawing/tub-layout.ts';
import { sectionSummary } from '../../../src/lib/words/en/drawings.ts';
import { lengthText } from '../../../src/lib/words/en/lengths.ts';
import { jobOf, patched, pendant } from '../../fixtures/jobs.ts';

describe('the tub drawn to scale', () => {
  test('keeps every length in proportion', () => {
    const { along, across, fill, above, beside } = layOutTub(jobOf(pendant()));
    expect(across / along).toBeCloseTo(80 / 120, 9);
    expect(fill / along).toBeCloseTo(60 / 120, 9);
    expect((above.plate.x - (above.pieces[0]?.x ?? 0)) / along).toBeCloseTo(30 / 120, 9);
    expect((beside.pieces[0]?.length ?? 0) / fill).toBeCloseTo(40 / 60, 9);
  });

  test('hangs a batch side by side, then in rows, all of it in the liquid', () => {
    const batch = patched(pendant(), {
      'piece.count': 4,
      'piece.width.value': 20,
      'piece.height.value': 20,
      'piece.openArea.value': 1,
    });
    const { above, beside, over } = layOutTub(jobOf(patched(batch, { 'tub.width.value': 50 })));
    expect([above.pieces.length, beside.pieces.length]).toEqual([2, 2]);
    expect(over.beside[0] + over.beside[1]).toBeCloseTo(0, 9);
  });

  test('lets what does not fit stick out', () => {
    const tall = layOutTub(jobOf(patched(pendant(), { 'tub.fill.value': 30 })));
    expect(tall.over.beside[0]).toBeGreaterThan(0);
    const wide = layOutTub(jobOf(patched(pendant(), { 'tub.width.value': 20 })));
    expect(wide.over.above.every((out) => out > 0)).toBe(true);
  });

  test('keeps the clips apart over a narrow gap', () => {
    const { clips } = layOutTub(jobOf(patched(pendant(), { 'cathode.gap.value': 2 })));
    expect(clips.plate - clips.piece).toBeGreaterThanOrEqual(34);
  });
});

describe('the section', () => {
  test('draws depth and undercut at one scale', () => {
    const { floor, side, scale } = sectionOf(0.001, 0.0001, 0.00008, 1);
    expect(floor - sectionTop).toBeCloseTo(0.0001 * scale, 9);
    expect(side[1] - side[0]).toBeCloseTo(0.00008 * scale, 9);
    expect(enlargement(scale)).toBe(100);
  });

  test('breaks a thick sheet off, and shows a thin one whole', () => {
    expect(sectionOf(0.003, 0.0001, 0.00008, 1).breakAt).not.toBeNull();
    expect(sectionOf(0.0008, 0.0004, 0.0003, 1).breakAt).toBeNull();
  });

  test('falls in two when the bite goes through', () => {
    const parts = (depth: number, faces: 1 | 2) => sectionOf(0.001, depth, 0.0004, faces).metal.match(/M/g);
    expect(parts(0.001, 1)).toHaveLength(2);
    expect(parts(0.0005, 2)).toHaveLength(2);
    expect(parts(0.0004, 2)).toHaveLength(1);
  });
});

describe('the section in words', () => {
  test('says how deep, how far sideways, and what stays', () => {
    const cut = { thickness: 0.001, depth: 0.0001, undercut: 0.00008 } as const;
    expect(sectionSummary({ ...cut, faces: 1 }, false)).toBe(
      '1\u00a0mm sheet: 0.1\u00a0mm down, about 0.08\u00a0mm sideways under the resist. 0.9\u00a0mm of metal stays below.',
    );
    expect(sectionSummary({ ...cut, faces: 2 }, false)).toContain('on each face');
    expect(sectionSummary({ ...cut, depth: 0.001, faces: 1 }, true)).toContain('right through');
  });
});

test('a disc is measured across, not by the square that stands for it', () => {
  const disc = { shape: 'disc', width: 0.0265868, height: 0.0265868 } as Parameters<typeof outlineOf>[0];
  expect(lengthText(outlineOf(disc).width, 'mm')).toBe('30\u00a0mm');
});
