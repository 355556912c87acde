import { describe, expect, test } from 'vitest';
import { resistFacts, resistKinds } from '../../../src/lib/core/facts/resists.ts';
import { blankDraft } from '../../../src/lib/session/draft.ts';
import { changed } from '../../../src/lib/session/design-follows.ts';
import { dryingOf } from '../../../src/lib/session/drying.ts';
import { dryingTexts } from '../../../src/lib/words/en/resist.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const paintedAt = 1_790_000_000_000;
const at = (minutes: number): number => paintedAt + minutes * MINUTE;

describe('the times', () => {
  test('stand for whatever is brushed or drawn on, and for nothing else', () => {
    const dries = resistKinds.filter((kind) => resistFacts[kind].dries !== null);
    expect(dries).toEqual(['nail-varnish', 'paint-pen', 'permanent-marker', 'asphaltum']);
  });
  test('say that they are common practice without a source, and how far they vary', () => {
    for (const kind of resistKinds) {
      const { dries } = resistFacts[kind];
      if (dries === null) continue;
      expect(dries, kind).toMatchObject({ evidence: 'commonPractice', source: 'tradePractice' });
      expect(dries.uncertainty.low, kind).toBeLessThan(dries.value);
      expect(dries.uncertainty.high, kind).toBeGreaterThan(dries.value);
    }
  });
  test('are told with the label first', () => {
    expect(dryingTexts.dries('1 h')).toMatch(/1 h: common practice, no source.*own label wins/);
  });
});

describe('the clock', () => {
  test('counts down from when it was painted', () => {
    expect(dryingOf('nail-varnish', String(paintedAt), at(0))).toEqual({ left: HOUR, readyAt: at(60) });
    expect(dryingOf('nail-varnish', String(paintedAt), at(45))).toEqual({
      left: 15 * MINUTE,
      readyAt: at(60),
    });
    expect(dryingOf('permanent-marker', String(paintedAt), at(4))?.left).toBe(6 * MINUTE);
    expect(dryingOf('asphaltum', String(paintedAt), at(60))?.left).toBe(3 * HOUR);
  });
  test('stands at nothing once the time is over, however long ago', () => {
    expect(dryingOf('nail-varnish', String(paintedAt), at(60))?.left).toBe(0);
    expect(dryingOf('nail-varnish', String(paintedAt), at(60 * 24 * 3))?.left).toBe(0);
  });
  test('never counts more than the whole when the clock was set back', () => {
    expect(dryingOf('nail-varnish', String(paintedAt), at(-500))).toEqual({ left: HOUR, readyAt: at(-440) });
  });
  test('is silent before it is painted, without a time, and where nothing dries', () => {
    expect(dryingOf('nail-varnish', '', at(0))).toBeNull();
    expect(dryingOf('nail-varnish', 'yesterday', at(0))).toBeNull();
    expect(dryingOf('vinyl', String(paintedAt), at(0))).toBeNull();
  });
  test('begins anew with another resist, and only then', () => {
    const draft = { ...blankDraft, 'resist.paintedAt': String(paintedAt) };
    expect(changed(draft, 'resist.kind', 'asphaltum')['resist.paintedAt']).toBe('');
    expect(changed(draft, 'hanger', 'tab')['resist.paintedAt']).toBe(String(paintedAt));
  });
});
