/** What a field of a job is called where it is typed or chosen, and what helps to fill it in. */
export interface FieldTexts {
  readonly label: string;
  readonly hint?: string;
}

/** By the field's id in the draft. */
export const fieldTexts = {
  'piece.shape': { label: 'Shape' },
  'piece.width': { label: 'Width' },
  'piece.height': { label: 'Height' },
  'piece.diameter': { label: 'Diameter' },
  'piece.length': { label: 'Length, laid flat' },
  'piece.thickness': { label: 'Thickness' },
  'piece.count': { label: 'How many alike, in the tub together' },
  'tub.kind': { label: 'The tub' },
  'tub.length': { label: 'Inside length', hint: 'the gap runs along it' },
  'tub.width': { label: 'Inside width' },
  'tub.diameter': { label: 'Inside diameter' },
  'tub.fill': { label: 'Depth of liquid' },
  'tub.waterByJug': {
    label: 'Water',
    hint: 'Fill the tub with water until it covers the piece, then measure that water. Whether the parts fit is yours to see.',
  },
  'cathode.gap': { label: 'Gap between piece and plate', hint: 'Wide is even, narrow is quick.' },
  'supply.kind': { label: 'Supply' },
  'supply.amps': { label: 'Does it show amps?' },
  'supply.volts': { label: 'Volts on its label' },
  'supply.maxAmps': { label: 'Most amps it gives' },
  'place.use': { label: 'The work is' },
  'place.country': {
    label: 'Country',
    hint: 'Two letters, such as NZ. Left empty, the strictest rules are taken.',
  },
  'place.room': { label: 'Room', hint: '3 by 3 m and 2.4 m high is about 20 m³' },
  paper: { label: 'Paper' },
} as const satisfies Readonly<Record<string, FieldTexts>>;

export type NamedField = keyof typeof fieldTexts;
