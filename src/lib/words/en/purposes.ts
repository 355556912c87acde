import { purposeDepths } from '../../core/facts/advice.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { amountText } from './units.ts';

/** A depth to choose. It has a hint of its own only where the depth cannot serve as the hint. */
type DepthChoice = { readonly id: string; readonly label: string } & (
  { readonly mm: number; readonly hint?: undefined } | { readonly mm?: undefined; readonly hint: string }
);

/**
 * Depths by purpose. Common practice, no source: values to start from, until the maker's own pieces
 * show better ones. The screen says so, too.
 */
export const depthPurposes: readonly DepthChoice[] = [
  { id: 'patina', label: 'To hold a patina', mm: purposeDepths.patina.value },
  { id: 'feel', label: 'To feel by finger', mm: purposeDepths.feel.value },
  { id: 'enamel', label: 'To hold enamel', mm: purposeDepths.enamel.value },
  { id: 'resin', label: 'To hold resin', mm: purposeDepths.resin.value },
  { id: 'through', label: 'Right through', hint: 'all the metal' },
  { id: 'number', label: 'My own depth', hint: 'mm or inch' },
];

export const purposesNote = 'Common practice, no source.';

/** Depth that polishing removes again; it is bitten in addition. Common practice, no source. */
export const polishAllowances: readonly DepthChoice[] = [
  { id: '0', label: 'None', hint: 'or by hand' },
  { id: String(purposeDepths.lightPolish.value), label: 'Light', mm: purposeDepths.lightPolish.value },
  { id: String(purposeDepths.fullPolish.value), label: 'Full', mm: purposeDepths.fullPolish.value },
];

export const depthHint = (choice: DepthChoice, units: ReadingUnits): string =>
  choice.mm === undefined ? choice.hint : amountText(choice.mm, 'mm', units);
