import { expect, test } from 'vitest';
import { patched, pendant } from '../fixtures/jobs.ts';
import { faultyFiles, overlayOf, runWith } from './overlay.ts';
import type { Edit } from './overlay.ts';

/** What somebody new to the project has to write; the compiler names the files, and here it is held to that. */

const resist: readonly Edit[] = [
  {
    path: 'src/lib/core/facts/resists.ts',
    above: '  asphaltum: {\n',
    add: `  beeswax: {
      holds: 'fair',
      applied: 'hot',
      softensInAlkali: false,
      remover: 'white-spirit',
      dries: null,
      ...trade('brushed on warm'),
    },\n`,
  },
  { path: 'src/lib/core/job/choices.ts', above: `\n]);\n\nexport const supplies`, add: `\n  'beeswax',` },
  {
    path: 'src/lib/words/en/resists.ts',
    above: '  asphaltum: {\n',
    add: `  beeswax: {
      name: 'beeswax',
      label: 'Beeswax',
      hint: 'Brushed on warm. Comes off with white spirit.',
      mask: 'Brush the warm wax on.',
      remove: 'Take the wax off.',
    },\n`,
  },
];

const metal: readonly Edit[] = [
  {
    path: 'src/lib/core/facts/metals/brasses.ts',
    above: '  C26000: {\n',
    add: `  C24000: {
      family: 'brass',
      composition: {
        ...alloy, massPercent: { Cu: 80, Zn: 20 }, evidence: 'fromMemory', source: 'memory', locator: 'nominal',
      },
      density: { ...dense(8.67, 0.005), evidence: 'fromMemory', source: 'memory', locator: 'C24000' },
    },\n`,
  },
  { path: 'src/lib/core/facts/cathodes.ts', above: `  'C26000',\n`, add: `  'C24000',\n` },
  { path: 'src/lib/core/job/choices.ts', above: `\n]);\n\n/** As bought`, add: `\n  'C24000',` },
  { path: 'src/lib/words/en/materials.ts', above: `  C26000: 'brass`, add: `  C24000: 'low brass 80/20',\n` },
  { path: 'src/lib/words/en/stock.ts', above: `  C27000: 'C27200'`, add: `  C24000: 'C27200',\n` },
];

/** The compiler reads 400 files for each, which on a machine at work elsewhere takes its time. */
const patience = 120_000;

test.each([
  ['resist', 3, resist],
  ['metal', 5, metal],
] as const)(
  'a new %s takes at most %i files, and all but the first are named by the compiler',
  (_what, most, edits) => {
    const [first, ...others] = edits.map(({ path }) => path);
    expect(edits.length).toBeLessThanOrEqual(most);
    expect(faultyFiles(overlayOf(edits.filter(({ path }) => path === first)))).toEqual(others.toSorted());
  },
  patience,
);

test(
  'once they are written the compiler finds no fault',
  () => {
    expect(faultyFiles(overlayOf([...resist, ...metal]))).toEqual([]);
  },
  patience,
);

test(
  'a job with the new ones is planned, told in words and carried by its printed code',
  async () => {
    const entry = `
    import { parseJob } from '$lib/core/plan/job-input.ts';
    import { planJob } from '$lib/core/plan/plan-job.ts';
    import { readJobCode, jobCode } from '$lib/link/job-code.ts';
    import { printPlan } from '$words/printed-plan.ts';
    export const tell = (raw) => {
      const { job } = parseJob(raw);
      const { refusals, steps } = printPlan(planJob(job));
      const carried = readJobCode(jobCode(job)).job;
      return { refusals, lines: steps.flatMap(({ lines }) => lines.map(({ text }) => text)), carried };
    };`;
    const { tell } = (await runWith(overlayOf([...resist, ...metal]), entry)) as {
      tell: (raw: unknown) => { refusals: unknown; lines: string[]; carried: object };
    };
    const raw = patched(pendant(), {
      'piece.metal': 'C24000',
      'cathode.metal': 'C24000',
      'resist.kind': 'beeswax',
    });
    const { refusals, lines, carried } = tell(raw);
    expect(refusals).toEqual([]);
    expect(lines.join('\n')).toContain('low brass 80/20');
    expect(lines).toEqual(expect.arrayContaining(['Brush the warm wax on.', 'Take the wax off.']));
    expect(carried).toMatchObject({ piece: { metal: 'C24000' }, resist: 'beeswax' });
  },
  patience,
);
