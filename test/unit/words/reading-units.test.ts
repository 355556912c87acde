import { describe, expect, test } from 'vitest';
import type { ReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import { misses } from '../../../src/lib/core/plan/what-if.ts';
import { leastScrap } from '../../../src/lib/core/plan/test-strip.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { alternativeText } from '../../../src/lib/words/en/alternatives.ts';
import {
  acrossText,
  dustText,
  foreseenLines,
  leastFault,
  measuredLines,
} from '../../../src/lib/words/en/artwork.ts';
import { depthAxis, depthOnAxis, stripTexts } from '../../../src/lib/words/en/learnt.ts';
import { profileColumns, profileSummary } from '../../../src/lib/words/en/bite-map.ts';
import { settingsLines } from '../../../src/lib/words/en/from-sheet.ts';
import { influenceText, influencesIntro, trialText } from '../../../src/lib/words/en/influences.ts';
import { areaTexts } from '../../../src/lib/words/en/metal.ts';
import { nextTimeText } from '../../../src/lib/words/en/next-time.ts';
import { printPlan } from '../../../src/lib/words/en/printed-plan.ts';
import { depthHint, depthPurposes, polishAllowances } from '../../../src/lib/words/en/purposes.ts';
import { alarmText, readingTexts } from '../../../src/lib/words/en/readings.ts';
import { fill } from '../../../src/lib/words/en/render.ts';
import { runWatch } from '../../../src/lib/words/en/run-watch.ts';
import {
  amountText,
  amountsText,
  areaText,
  degreesText,
  lengthText,
  symbolRead,
  temperatureText,
} from '../../../src/lib/words/en/units.ts';
import { amount, jobOf, patched, pendant, planOf, tokens } from '../../fixtures/jobs.ts';
import { ruleCases } from '../../fixtures/rule-cases.ts';
import { metric } from '../print/definition-texts.ts';

const mm: ReadingUnits = { length: 'mm', temperature: 'degC' };
const cm: ReadingUnits = { ...mm, length: 'cm' };
const inches: ReadingUnits = { length: 'in', temperature: 'degF' };
/** a no-break space stands before a unit */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('amounts', () => {
  test.each([
    ['mm', 0.03, mm, '30 mm'],
    ['cm', 0.03, cm, '3 cm'],
    ['sheet, where lengths are read in cm', 0.0008, cm, '0.8 mm'],
    ['inches as typed', 1.25 * 0.0254, inches, '1.25 in'],
    ['a depth of four thousandths', 0.004 * 0.0254, inches, '0.004 in'],
    ['a depth typed in mm', 0.0001, inches, '0.0039 in'],
  ])('a length in %s', (_, metres, units, text) => {
    expect(plain(lengthText(metres, units))).toBe(text);
  });
  test('areas, temperatures and steps between them', () => {
    expect(plain(areaText(4.2e-4, mm))).toBe('4.2 cm²');
    expect(plain(areaText(6.4516e-4, inches))).toBe('1 in²');
    expect(plain(temperatureText(293.15, mm))).toBe('20 °C');
    expect(plain(temperatureText(293.15, inches))).toBe('68 °F');
    expect([plain(degreesText(3, mm)), plain(degreesText(3, inches))]).toEqual(['3 K', '5.4 °F']);
  });
  test('two ends in one unit, and what everybody reads alike', () => {
    expect(plain(amountsText(80, 120, 'um', inches))).toBe('0.0031 to 0.0047 in');
    expect(plain(amountsText(8, 12, 'mm', cm))).toBe('0.80 to 1.2 cm');
    expect(plain(amountText(33.7, 'g'))).toBe('33.7 g');
    expect(plain(amountText(33.7, 'g', inches))).toBe('33.7 g');
    expect((['um', 'degC', 'A/dm2', 'g'] as const).map((unit) => symbolRead(unit, inches))).toEqual([
      'in',
      '°F',
      'A/in²',
      'g',
    ]);
  });
});

describe('a limit to keep to', () => {
  test.each([
    ['least', 52, '2.05 in'],
    ['most', 52, '2.04 in'],
    ['least', 50.8, '2 in'],
  ] as const)('at %s %d mm is rounded to the safe side', (bound, value, text) => {
    expect(plain(fill('{amount}', { amount: { value, unit: 'mm', bound } }, inches))).toBe(text);
  });
  test('so that the remedy for a tub that is too small is enough when typed in inches', () => {
    const tall = patched(pendant(), {
      units: inches,
      'piece.height': amount(45, 'mm'),
      'tub.fill': amount(40, 'mm'),
    });
    const [refusal] = printPlan(planJob(jobOf(tall))).refusals;
    const told = /at least ([\d.]+)\u00a0in/.exec(refusal?.instead ?? '')?.[1];
    expect(refusal?.rule).toBe('does-not-fit');
    const filled = patched(tall, { 'tub.fill': amount(Number(told), 'in') });
    expect(planJob(jobOf(filled)).refusals.map(({ rule }) => rule)).not.toContain('does-not-fit');
  });
});

describe('in inches and °F nothing is left in metric', () => {
  test.each(Object.entries(ruleCases))('in what %s says', (rule, { speaks }) => {
    const printed = printPlan(planJob(jobOf(patched(speaks, { units: inches }))));
    const own = [...printed.cautions, ...printed.refusals].filter((said) => said.rule === rule);
    expect(own).toHaveLength(1);
    for (const said of own) expect(JSON.stringify(said)).not.toMatch(metric);
  });
  test('in the texts of screens', () => {
    const plan = planOf(patched(tokens(), { units: inches }));
    const measured = {
      area: 420,
      error: 3,
      share: 0.4,
      line: { width: 0.6 },
      gap: { width: 0.4 },
      islands: 1,
    };
    const texts = [
      ...settingsLines(plan.job),
      ...runWatch(plan.figures, inches, ['amps', 'celsius']),
      ...(Object.keys(readingTexts) as (keyof typeof readingTexts)[]).map((id) => alarmText(id, inches)),
      ...[...depthPurposes, ...polishAllowances]
        .filter(({ mm: depth }) => depth !== undefined)
        .map((one) => depthHint(one, inches)),
      ...measuredLines({ measured, pinholes: 0, specks: 0 }, true, inches),
      ...foreseenLines({ lost: 1, lostGrown: 0, gapsClose: true }, 0.1, 0.08, 0.2, inches),
      acrossText(31, 30, inches),
      dustText({ kind: 'speck', x: 1, y: 2, width: 0.2 }, 1, inches),
      alternativeText(
        { id: 'gentler', gap: 30, control: 'amps', setting: 1, minutes: 20, evenness: null },
        inches,
      ),
      profileSummary({ at: 0.02, steps: [{ from: 0, to: 0.03, relative: 1 }] }, 100, inches),
      ...profileColumns(inches).map(({ label }) => label),
      influencesIntro(misses, inches),
      influenceText({ id: 'gap', low: 90, high: 110, share: 1, span: null }, inches),
      trialText({ depth: 90, minutes: 20, amps: 1, value: 1 }, 100, inches),
      nextTimeText({ gotUm: 60, wantedUm: 100, minutes: 28, amps: 0.4, atMinutes: 17 }, inches),
      stripTexts.small(leastScrap, inches),
      stripTexts.windowSize(12, 14, inches),
      depthAxis(inches),
      leastFault(inches),
      ...areaTexts.ways('in2').map(({ hint }) => hint),
    ];
    expect(texts.filter((text) => metric.test(text))).toEqual([]);
    expect(texts.join(' ')).toMatch(/104\u00a0°F or more: stop now/);
  });
});

test('the axis of depths is read in its own unit', () => {
  expect([depthAxis(mm), depthAxis(inches)]).toEqual(['Depth, μm', 'Depth, in']);
  expect([depthOnAxis(254, mm), depthOnAxis(254, inches)]).toEqual([254, expect.closeTo(0.01, 12)]);
  expect(areaTexts.ways('cm2')[1]?.hint).toBe('cm², counted on squared paper');
});

test('in mm and °C the same texts say what they said', () => {
  expect(plain(influencesIntro(misses, mm))).toContain(
    '(3 mm, 5 % of a knob, 10 % of strength, 3 K, 1 min: our own estimate)',
  );
  expect(plain(stripTexts.small(leastScrap, mm))).toBe(
    'Too small for four windows: 32 mm wide and 19 mm high is the least.',
  );
  expect(plain(nextTimeText({ gotUm: 60, wantedUm: 100, minutes: 28, amps: 0.4, atMinutes: 17 }, mm))).toBe(
    'You got 60 μm where 100 was planned. Next time: 28 min with current on, or 0.40 A for the same 17 min.',
  );
});
