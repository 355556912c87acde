/** Things that may be fixed to a piece, and what to do about each. Common practice, no source. */
export const attachedThings = [
  { id: 'seams', label: 'Solder seams I made', follows: 'Stop them out: solder bites faster than sheet.' },
  {
    id: 'oldsolder',
    label: 'Old or unknown solder',
    follows: 'Not etched here: old yellowish solder can hold cadmium, a poison.',
  },
  {
    id: 'stones',
    label: 'Stones',
    follows:
      'Take them out first. If one stays in, do not dip the piece: soft stones soak up salt and metal.',
  },
  {
    id: 'glue',
    label: 'Glue',
    follows: 'Take it off first. It lets go in the bath or under solvent, and grease spreads from it.',
  },
  {
    id: 'hinges',
    label: 'Hinges, catches, springs',
    follows: 'Take them off. Salt stays in the joint, and a steel pin rusts.',
  },
  { id: 'plating', label: 'Plating', follows: 'Not etched here: the metal under the skin is not known.' },
] as const;
