import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import type { Plan } from '../../core/plan/plan.ts';
import type { SignalWord } from '../../core/rules/rule.ts';
import { figureName } from './figures.ts';
import { printPlan } from './printed-plan.ts';
import { figureParts, figureText, termText } from './render.ts';

/** A plan in words, so that a page can show it without loading the chemistry or the texts of the rules. */
export interface PlanInWords {
  readonly title: string;
  readonly what: string;
  /** What makers ask first: how much salt, when to stop, how long. */
  readonly heroes: readonly { name: string; number: string; unit: string; all: string }[];
  readonly settings: readonly string[];
  readonly steps: readonly {
    title: string;
    cautions: readonly { signal: SignalWord; text: string }[];
    lines: readonly string[];
  }[];
}

export function planInWords(plan: Plan): PlanInWords {
  const printed = printPlan(plan);
  const units = readingUnitsOf(plan.job);
  const { salt_mass, charge } = plan.figures;
  const asked: readonly (readonly [FigureId, typeof charge])[] = [
    ['salt_mass', salt_mass],
    ['charge', charge],
    ['run_time', plan.settings?.minutes],
  ];
  return {
    title: plan.job.title,
    what: `${termText(plan.job.piece.metal)} in ${termText(plan.job.bath.salt)}`,
    heroes: asked.flatMap(([id, figure]) => {
      if (!figure) return [];
      const { number, unit } = figureParts(figure, units);
      return [{ name: figureName(id, units), number, unit, all: figureText(figure, units) }];
    }),
    settings: printed.steps
      .flatMap(({ step, lines }) => (step === 'settings' ? lines : []))
      .filter(({ id }) => id !== 'test-strip')
      .map(({ text }) => text),
    steps: printed.steps.map(({ step, title, lines }) => ({
      title,
      cautions: printed.cautions
        .filter((caution) => caution.step === step)
        .map(({ signal, text }) => ({ signal, text })),
      lines: lines.map(({ text }) => text),
    })),
  };
}
