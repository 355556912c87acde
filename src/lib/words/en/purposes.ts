import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { amountText } from './units.ts';

/** A depth to choose; a hint of its own where the depth is not its hint. */
type DepthChoice = { readonly id: string; readonly label: string } & (
  { readonly mm: number; readonly hint?: undefined } | { readonly mm?: undefined; readonly hint: string }
);

/**
 * Depths by purpose. Common practice, no source: a start, to be bettered by the maker's own pieces.
 * The screen says so too.
 */
export const depthPurposes: readonly DepthChoice[] = [
  { id: 'patina', label: 'To hold a patina', mm: 0.1 },
  { id: 'feel', label: 'To feel by finger', mm: 0.15 },
  { id: 'enamel', label: 'To hold enamel', mm: 0.3 },
  { id: 'resin', label: 'To hold resin', mm: 0.4 },
  { id: 'through', label: 'Right through', hint: 'all the metal' },
  { id: 'number', label: 'My own depth', hint: 'in mm' },
];

export const purposesNote =
  'These depths are common practice, without a source. Your own pieces know better.';

/** What polishing takes off is bitten on top. Common practice, no source. */
export const polishAllowances: readonly DepthChoice[] = [
  { id: '0', label: 'None', hint: 'or by hand' },
  { id: '0.02', label: 'Light', mm: 0.02 },
  { id: '0.05', label: 'Full', mm: 0.05 },
];

export const depthHint = (choice: DepthChoice, units: ReadingUnits): string =>
  choice.mm === undefined ? choice.hint : amountText(choice.mm, 'mm', units);
