import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { InstructionId } from '../../core/plan/instruction-id.ts';
import type { Params } from '../../core/rules/rule.ts';
import { instructionTexts } from './instructions.ts';
import { fill } from './render.ts';
import { storedText } from './stored-text.ts';

/** An instruction in words. Its plan may be a stored one from another version. */
export const workLine = (id: InstructionId, params: Params, units: ReadingUnits): string =>
  fill(storedText(instructionTexts, id), params, units);
