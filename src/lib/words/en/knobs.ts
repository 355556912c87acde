/** Texts of the screen that says how to set the supply. */
export const knobsTexts = {
  title: 'Hang, clip and set',
  papers: 'Print the bench card',
  wiring: 'From the supply to the metals: plus to the piece, minus to the plate',
  piece: 'piece',
  plate: 'plate',
  loop: 'Each wire hangs in a loop: drops fall off there.',
  supply: { bench: 'bench supply', adapter: 'adapter', battery: 'battery' },
  noArea: 'The bare area is still missing. Choose Resist above and give it.',
} as const;
