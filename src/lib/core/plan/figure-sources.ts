import { rememberingSolver } from '../cell/solved-field.ts';
import { metals } from '../facts/metals.ts';
import type { BitableMetal } from '../facts/metals.ts';
import { boughtSaltIds } from '../facts/salts.ts';
import type { FigureId } from './outcome.ts';
import type { JobInput } from './job-input.ts';
import type { Plan } from './plan.ts';
import { planJob } from './plan-job.ts';

/**
 * Which figures rest on which source: the job is planned with every metal that can be bitten in every
 * salt that makes a bath, and the workings are read. Refused pairings have no figures.
 * @param jobs as planned; metal, plate and salt are exchanged
 * @returns figure ids by source id
 */
export function figureSources(jobs: readonly JobInput[]): Readonly<Record<string, readonly FigureId[]>> {
  const found = new Map<string, Set<FigureId>>();
  const solve = rememberingSolver();
  const note = ({ figures }: Plan): void => {
    for (const [id, { working }] of Object.entries(figures))
      for (const source of working.sources)
        found.set(source, (found.get(source) ?? new Set()).add(id as FigureId));
  };
  for (const job of jobs) {
    // with a jug the closed form is used
    note(planJob(job));
    for (const metal of Object.keys(metals) as BitableMetal[]) {
      for (const salt of boughtSaltIds) {
        const variant = {
          ...job,
          piece: { ...job.piece, metal },
          cathode: { ...job.cathode, metal },
          bath: { ...job.bath, salt },
        };
        note(planJob(variant, solve));
      }
    }
  }
  return Object.fromEntries([...found].map(([source, ids]) => [source, [...ids]]));
}
