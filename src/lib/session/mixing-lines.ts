import { readingUnitsOf } from '../core/job/reading-units.ts';
import { practice } from '../core/facts/limits.ts';
import type { InstructionId } from '../core/plan/instruction-id.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { Params } from '../core/rules/rule.ts';
import { fromHours } from '../core/units/time.ts';
import { workLine } from '$words/work-line.ts';
import { weighingFor } from './stock.ts';
import type { PieceWeighing } from './stock.ts';

export interface MixingLine {
  readonly id: string;
  readonly text: string;
}

/**
 * How the plan's salt is weighed on the maker's scale, with the water that the tub takes, whole mL; null for a bath
 * that is mixed already.
 */
export function weighingOf(
  { figures, job }: Plan,
  scale: string,
): (PieceWeighing & { readonly tubWaterMl: number }) | null {
  const { salt_mass: salt, bath_volume: bath, water_volume: water } = figures;
  if (!salt || !bath || job.bath.record !== null) return null;
  const weighing = weighingFor(
    {
      grams: salt.value,
      low: salt.low,
      high: salt.high,
      strength: job.bath.strength,
      bathMl: bath.value,
    },
    scale === 'none' ? null : Number(scale),
  );
  return { ...weighing, tubWaterMl: Math.round(water?.value ?? 0) };
}

/**
 * The plan's lines of mixing, with the mass as the maker's scale can show it. A stock is mixed in a jug
 * and poured, so that its lines stand in for the tub's.
 */
export function mixingLines(plan: Plan, scale: string): readonly MixingLine[] {
  const weighing = weighingOf(plan, scale);
  const lines = plan.instructions.filter(({ step }) => step === 'electrolyte');
  const text = (id: InstructionId, params: Params): MixingLine => ({
    id,
    text: workLine(id, params, readingUnitsOf(plan.job)),
  });
  return lines.flatMap(({ id, params }): MixingLine[] => {
    if (weighing && id === 'weigh-salt')
      return [text(id, { ...params, mass: { value: weighing.grams, unit: 'g' } })];
    if (weighing?.kind === 'pour') {
      if (id === 'pour-water' || id === 'pour-jug')
        return [text('stock-water', { ...params, water: { value: weighing.waterMl, unit: 'mL' } })];
      if (id === 'label-tub')
        return [
          text('stock-pour', { volume: { value: weighing.pourMl, unit: 'mL' } }),
          text('label-both', {}),
        ];
    }
    return [text(id, params)];
  });
}

/** When the last grain has dissolved, ms since 1970. */
export const dissolvedAt = (mixedAt: number): number => mixedAt + fromHours(practice.dissolveHours.value);
