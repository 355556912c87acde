/** What a field of a job is called where it is typed or chosen, and what helps to fill it in. */
export interface FieldTexts {
  readonly label: string;
  readonly hint?: string;
}

/** By the field's id in the draft. */
export const fieldTexts = {
  'piece.metal': { label: 'Metal' },
  'piece.shape': { label: 'Shape' },
  'piece.width': { label: 'Width' },
  'piece.height': { label: 'Height' },
  'piece.diameter': { label: 'Diameter' },
  'piece.length': { label: 'Length, laid flat' },
  'piece.thickness': { label: 'Thickness' },
  'piece.count': { label: 'How many alike, in the tub together' },
  'piece.attached': { label: 'What is on the piece', hint: 'Bare sheet: go on.' },
  'piece.purpose': { label: 'Depth' },
  'piece.depth': { label: 'Depth' },
  'piece.polish': { label: 'Polish afterwards', hint: 'What polishing takes off is bitten on top.' },
  'piece.area': { label: 'How you know it' },
  'piece.openShare': { label: 'Bare share of the face' },
  'piece.openArea': { label: 'Bare area, one piece' },
  'piece.faces': { label: 'Bitten faces', hint: 'The other face is stopped out.' },
  hanger: { label: 'Hanger' },
  'cathode.metal': { label: 'Metal of the plate' },
  'cathode.size': { label: 'Its size under the liquid' },
  'cathode.width': { label: 'Width' },
  'cathode.height': { label: 'Height' },
  'tub.kind': { label: 'The tub' },
  'tub.length': { label: 'Inside length', hint: 'the gap runs along it' },
  'tub.width': { label: 'Inside width' },
  'tub.diameter': { label: 'Inside diameter' },
  'tub.fill': { label: 'Depth of liquid' },
  'tub.waterByJug': {
    label: 'Water',
    hint: 'Fill the tub with water until it covers the piece, then measure that water. See for yourself that the parts fit.',
  },
  'cathode.gap': { label: 'Gap between piece and plate', hint: 'Wide is even, narrow is quick.' },
  'bath.strength': { label: 'Strength', hint: 'salt for each litre of water' },
  'bath.water': { label: 'Water' },
  'bath.temperature': { label: 'Bath temperature' },
  scale: { label: 'Your scale shows steps of' },
  'resist.kind': { label: 'Resist' },
  'supply.kind': { label: 'Supply' },
  'supply.amps': { label: 'Does it show amps?' },
  'supply.volts': { label: 'Volts on its label' },
  'supply.maxAmps': { label: 'Most amps it gives' },
} as const satisfies Readonly<Record<string, FieldTexts>>;

export type NamedField = keyof typeof fieldTexts;
