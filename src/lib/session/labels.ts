import { labelCopies } from '../core/job/typed-bounds.ts';
import { wholeWithin } from '../core/units/typed-number.ts';
import { changePreferences, keptPreferences } from './preferences.ts';
import { openNotebook } from './jobs.ts';
import { paperOfRegion } from './paper-size.ts';
import type { Paper } from './paper-size.ts';

/** A typed number of copies; null when it is not a valid number. */
export const copiesIn = (typed: string): number | null =>
  wholeWithin(typed, labelCopies.least, labelCopies.most);

/** The paper in the printer, and the first free place on the label sheet. */
export interface LabelPaper {
  readonly paper: Paper;
  readonly place: number;
}

export async function labelPaper(): Promise<LabelPaper> {
  const kept = await keptPreferences(await openNotebook());
  const paper =
    kept?.paper === 'A4' || kept?.paper === 'Letter' ? kept.paper : paperOfRegion(navigator.languages);
  return { paper, place: kept?.labelPlace ?? 0 };
}

export async function keepLabelPlace(labelPlace: number): Promise<void> {
  await changePreferences(await openNotebook(), { labelPlace });
}
