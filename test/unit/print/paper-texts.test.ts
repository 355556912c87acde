import { describe, expect, test } from 'vitest';
import { classPack } from '../../../src/lib/core/plan/class-pack.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { solveCell } from '../../../src/lib/core/cell/solved-field.ts';
import type { Plan } from '../../../src/lib/core/plan/plan.ts';
import { paperKinds } from '../../../src/lib/print/order.ts';
import { documentOf } from '../../../src/lib/print/papers.ts';
import { planInWords } from '../../../src/lib/words/en/plan-summary.ts';
import { amount, cuff, jobOf, patched, pendant, tokens } from '../../fixtures/jobs.ts';
import type { Raw } from '../../fixtures/jobs.ts';
import { metric, textsOf } from './definition-texts.ts';

/** Stripes on the left, all bare on the right. */
const design = {
  columns: 30,
  rows: 40,
  cells: Array.from({ length: 1200 }, (_, n) => (n % 30 < 15 ? (n % 3 === 0 ? 'f' : '0') : 'f')).join(''),
};

const jobs: Readonly<Record<string, Raw>> = {
  'seed-head-pendant': pendant(),
  'wave-band-cuff': cuff(),
  'evening-class-tokens': tokens(),
  'drawn-pendant': patched(pendant(), { 'piece.design': design, 'piece.openArea': amount(8, 'cm2') }),
};

const asked = { stations: 5, learners: 2, adults: 2, minutes: 120 } as const;

/** Everything that a plan says on paper and in short on the start page, a line each. */
function everyText(plan: Plan): readonly string[] {
  const summary = planInWords(plan);
  return [
    ...textsOf(documentOf({ kind: 'job', plan, order: { kinds: paperKinds, marks: null } })),
    ...textsOf(
      documentOf({
        kind: 'class',
        order: { plan, pack: classPack(plan, asked), paper: plan.job.paper, names: [] },
      }),
    ),
    summary.what,
    ...summary.heroes.map(({ name, all }) => `${name}: ${all}`),
    ...summary.settings,
    ...summary.steps.flatMap(({ cautions, lines }) => [...cautions.map(({ text }) => text), ...lines]),
  ];
}

/** Lines with a number, each once: what is worded anew may change, what is written in figures may not. */
const numbersIn = (texts: readonly string[]): string =>
  [...new Set(texts.filter((text) => /\d/.test(text) && !/^data \d/.test(text)))]
    .map((text) => `${text}\n`)
    .join('');

describe.each(Object.entries(jobs))('%s', (name, raw) => {
  test('writes its numbers as it always did', async () => {
    const texts = everyText(planJob(jobOf(raw), solveCell));
    await expect(numbersIn(texts)).toMatchFileSnapshot(`../../fixtures/paper-texts/${name}.txt`);
  });
});

/** What stays metric for everybody, and why. */
const stays: readonly { readonly why: string; readonly text: RegExp }[] = [
  {
    why: 'the ruler tells whether a printer kept to size, and is checked with any ruler',
    text: /100\u00a0mm/,
  },
  { why: 'the same ruler, to be filled in', text: /^Measured _+ mm$/ },
  { why: 'a formula stands in the units of its source', text: /^[ρk] = [ρk]\(w, 20 °C\)/ },
  { why: 'the title of a source says what it holds', text: /^CRC Handbook/ },
  { why: 'EN 62485 gives the opening so', text: /EN 62485/ },
];

describe.each(Object.entries(jobs))('%s, read in inches and °F', (_, raw) => {
  const plan = planJob(jobOf({ ...raw, units: { length: 'in', temperature: 'degF' } }), solveCell);
  const texts = everyText(plan);

  test('has no length, area or temperature left in metric', () => {
    const left = texts.filter((text) => metric.test(text) && !stays.some((one) => one.text.test(text)));
    expect(left).toEqual([]);
  });
  test('has the same figures as in mm and °C', () => {
    expect(plan.figures).toEqual(planJob(jobOf(raw), solveCell).figures);
  });
});

test('every reason to stay metric is needed', () => {
  const plan = planJob(jobOf({ ...pendant(), units: { length: 'in', temperature: 'degF' } }), solveCell);
  for (const { text } of stays)
    expect(
      everyText(plan).some((line) => text.test(line)),
      String(text),
    ).toBe(true);
});
