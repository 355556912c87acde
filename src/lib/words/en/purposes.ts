/**
 * Depths by purpose. Common practice, no source: a start, to be bettered by the maker's own pieces.
 * The screen says so too.
 */
export const depthPurposes = [
  { id: 'patina', label: 'To hold a patina', mm: 0.1, hint: '0.1 mm' },
  { id: 'feel', label: 'To feel by finger', mm: 0.15, hint: '0.15 mm' },
  { id: 'enamel', label: 'To hold enamel', mm: 0.3, hint: '0.3 mm' },
  { id: 'resin', label: 'To hold resin', mm: 0.4, hint: '0.4 mm' },
  { id: 'through', label: 'Right through', mm: undefined, hint: 'all the metal' },
  { id: 'number', label: 'My own depth', mm: undefined, hint: 'in mm' },
] as const;

export const purposesNote =
  'These depths are common practice, without a source. Your own pieces know better.';

/** What polishing takes off is bitten on top, mm. Common practice, no source. */
export const polishAllowances = [
  { mm: '0', label: 'None', hint: 'or by hand' },
  { mm: '0.02', label: 'Light', hint: '0.02 mm' },
  { mm: '0.05', label: 'Full', hint: '0.05 mm' },
] as const;
