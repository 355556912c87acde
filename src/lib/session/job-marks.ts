import { parseJob } from '../core/plan/job-input.ts';
import type { Plan } from '../core/plan/plan.ts';
import { carriedText } from '../link/address.ts';
import { jobCode } from '../link/job-code.ts';
import { shortCode } from '../link/short-code.ts';
import type { Draft } from './draft.ts';
import { notebook } from './open.ts';
import { rememberCode } from './from-sheet.ts';
import { jobFileOf, leftOpen } from './job-file.ts';
import type { JobSession } from './job-session.svelte.ts';

/** The text that a job's papers carry: its settings, with the supply as it was chosen or left open. */
export function textForPapers(draft: Draft, plan: Plan): string | null {
  const typed = parseJob(jobFileOf(draft), { areaLater: true });
  if ('faults' in typed) return null;
  // a plan kept by an older version may lack what was not asked then
  return jobCode({ ...typed.job, ...plan.job, supply: typed.job.supply }, leftOpen(draft));
}

/**
 * The codes that lead from a job's papers back to its settings. The plan is computed for its proposed volts
 * and amps, but the code holds the supply as the maker has it. The code is stored, so that this notebook
 * knows it again.
 * @param home address of the start page
 * @returns null while the job is incomplete
 */
export async function jobMarks(
  session: JobSession,
  plan: Plan,
  home: URL,
): Promise<{ readonly code: string; readonly carried: string } | null> {
  const text = textForPapers(session.draft, plan);
  if (text === null) return null;
  const code = shortCode(text);
  if (session.mayWrite) await rememberCode(await notebook(), code, { id: session.id, text });
  return { code, carried: carriedText(text, home) };
}
