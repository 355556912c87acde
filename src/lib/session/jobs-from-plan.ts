import { plainDraft } from '../core/plan/job-draft.ts';
import type { JobInput } from '../core/plan/job-input.ts';
import { depthPurposes } from '$words/purposes.ts';
import type { Draft } from './draft.ts';
import { pieceSize } from './job-file.ts';

/** The purpose of a depth: right through, or the purpose that usually has this depth. */
function purposeOf({ through, depth, thickness, faces }: JobInput['piece']): string {
  const whole = faces === 'both' ? thickness / 2 : thickness;
  if (through && Math.abs(depth / whole - 1) < 1e-5) return 'through';
  const mm = Number((depth * 1e3).toPrecision(6));
  return depthPurposes.find((known) => known.mm === mm)?.id ?? 'number';
}

/**
 * A planned job as a draft to start from: every field as if typed, and short answers such as "same" where
 * they apply.
 */
export function draftOf(job: JobInput): Draft {
  const plain = plainDraft(job);
  const [width, height] = pieceSize(plain);
  const isSameSize = plain['cathode.width'] === plain[width] && plain['cathode.height'] === plain[height];
  return {
    ...plain,
    'piece.purpose': purposeOf(job.piece),
    ...(plain['cathode.metal'] === plain['piece.metal'] ? { 'cathode.metal': 'same' } : {}),
    ...(isSameSize ? { 'cathode.size': 'same', 'cathode.width': '', 'cathode.height': '' } : {}),
    // keep the job's recipe: do not propose another
    'bath.for': 'own',
  };
}
