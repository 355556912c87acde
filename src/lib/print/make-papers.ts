import type { Plan } from '../core/plan/plan.ts';
export const makePapers = async (_plan: Plan): Promise<Uint8Array> => new Uint8Array();
