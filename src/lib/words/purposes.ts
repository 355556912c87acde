/** Depths by purpose. Common practice, no source: a start, to be bettered by the maker's own pieces. */
export const depthPurposes = [
  { id: 'patina', label: 'To hold a patina', mm: 0.1, hint: '0.1 mm' },
  { id: 'feel', label: 'To feel with a finger', mm: 0.15, hint: '0.15 mm' },
  { id: 'enamel', label: 'To hold enamel', mm: 0.3, hint: '0.3 mm' },
  { id: 'resin', label: 'To hold resin', mm: 0.4, hint: '0.4 mm' },
  { id: 'through', label: 'Right through', mm: undefined, hint: 'the whole thickness' },
  { id: 'number', label: 'A depth of my own', mm: undefined, hint: 'in mm' },
] as const;
