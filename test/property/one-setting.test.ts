import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseJob } from '../../src/lib/core/plan/job-input.ts';
import { planAsProposed, planJob } from '../../src/lib/core/plan/plan-job.ts';
import type { Plan } from '../../src/lib/core/plan/plan.ts';
import { printPlan } from '../../src/lib/words/en/printed-plan.ts';
import { amountText } from '../../src/lib/words/en/units.ts';
import { figureText } from '../../src/lib/words/en/render.ts';
import { readingUnitsOf } from '../../src/lib/core/job/reading-units.ts';
import { arbitraryJob } from './arbitrary-job.ts';
import { chunk } from './runs.ts';

/** What a plan says twice of one quantity; nothing in a sound one. */
function saidTwice({ figures, settings, job, instructions }: Plan): readonly string[] {
  if (settings === null) return [];
  const differs = (name: string, a: unknown, b: unknown): string[] => (a === b ? [] : [name]);
  const stop = instructions.find(({ id }) => id.startsWith('stop-at-'))?.params;
  return [
    ...differs('minutes', settings.minutes, figures.run_time),
    ...differs('minutes in the line', stop?.['minutes'], figures.run_time),
    ...differs('first look', settings.firstLook, figures.first_look),
    ...(settings.control === 'amps' && job.supply.control === 'amps'
      ? [
          ...differs('amp-hours', settings.stopCharge, figures.charge),
          ...differs('display', settings.display, figures.volts),
          ...differs('amps', settings.amps, job.supply.amps),
        ]
      : differs('kind of setting', settings.control, job.supply.control)),
  ];
}

test('no plan of a random job holds two values of one quantity, as set or as proposed', () => {
  let planned = 0;
  fc.assert(
    fc.property(arbitraryJob, (file) => {
      const parsed = parseJob(file, { areaLater: true });
      fc.pre('job' in parsed);
      if (!('job' in parsed)) return;
      for (const plan of [planJob(parsed.job), planAsProposed(parsed.job)]) {
        expect(saidTwice(plan)).toEqual([]);
        if (plan.settings === null) continue;
        planned += 1;
        // and in words: the line that says when to stop has the very text of the figure
        const lines = printPlan(plan).steps.flatMap((step) => step.lines);
        const units = readingUnitsOf(plan.job);
        const stop = lines.find(({ id }) => id.startsWith('stop-at-'))?.text ?? '';
        expect(stop).toContain(figureText(plan.settings.minutes, units));
        if (plan.settings.control === 'amps') {
          const set = lines.find(({ id }) => id === 'set-amps')?.text ?? '';
          expect(set).toContain(amountText(plan.settings.amps, 'A'));
          expect(lines.map(({ id }) => id)).not.toContain('set-volts');
        }
      }
      // what is proposed is not proposed otherwise again
      const again = planAsProposed(parsed.job);
      expect(again.instructions.map(({ id }) => id).filter((id) => id.startsWith('would-set'))).toEqual([]);
    }),
    chunk(1000),
  );
  expect(planned).toBeGreaterThan(100);
});
