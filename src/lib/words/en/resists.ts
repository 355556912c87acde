import { resistKinds } from '../../core/facts/resists.ts';
import type { ResistKind } from '../../core/facts/resists.ts';

/** All texts about one resist together, so that a new resist is written in one place. */
export interface ResistTexts {
  /** Name within a sentence. */
  readonly name: string;
  /** Label where it is chosen. */
  readonly label: string;
  /** How well it masks, and how it is removed. */
  readonly hint: string;
  /** The instruction to apply it. */
  readonly mask: string;
  /** The instruction to remove it. */
  readonly remove: string;
}

/** Common practice, no source. */
export const resistTexts: Readonly<Record<ResistKind, ResistTexts>> = {
  'nail-varnish': {
    name: 'nail varnish',
    label: 'Nail varnish',
    hint: 'Two coats. Off with acetone.',
    mask: 'Paint the resist with nail varnish, two thin coats, and let it harden.',
    remove: 'Take the varnish off with acetone, away from the bath and the supply.',
  },
  'paint-pen': {
    name: 'paint pen',
    label: 'Paint pen',
    hint: 'Good for drawing. Off with acetone.',
    mask: 'Draw the resist with the paint pen, go over it twice, and let it harden.',
    remove: 'Take the paint off with acetone, away from the bath and the supply.',
  },
  'permanent-marker': {
    name: 'permanent marker',
    label: 'Permanent marker',
    hint: 'Weak: three layers. Off with alcohol.',
    mask: 'Draw with the marker, three layers: it is the weakest resist, so bite gently.',
    remove: 'Wipe the marker off with alcohol, away from the bath and the supply.',
  },
  vinyl: {
    name: 'vinyl',
    label: 'Vinyl sticker',
    hint: 'Sharp edges. Peels off.',
    mask: 'Stick the vinyl down and press every edge with a burnisher.',
    remove: 'Peel the vinyl off under warm water.',
  },
  toner: {
    name: 'toner transfer',
    label: 'Toner, ironed on',
    hint: 'Fine lines, pinholes. Off with acetone.',
    mask: 'Iron the toner on, soak off the paper, touch up pinholes.',
    remove: 'Take the toner off with acetone, away from the bath and the supply.',
  },
  'dry-film': {
    name: 'dry film',
    label: 'Dry film',
    hint: 'Finest lines. Needs light and developer.',
    mask: 'Laminate the film, expose and develop it as its maker says, rinse well.',
    remove: 'Strip the film as its maker says.',
  },
  asphaltum: {
    name: 'asphaltum',
    label: 'Asphaltum',
    hint: 'Brushed on, dries for hours. Off with white spirit.',
    mask: 'Brush the asphaltum on thinly and let it dry for hours; scratch the design through it.',
    remove: 'Take the asphaltum off with white spirit, away from the bath and the supply.',
  },
};

/** Texts whose ids are made from the id of the resist. */
const byId = <Id extends string>(
  idOf: (kind: ResistKind) => Id,
  textOf: (texts: ResistTexts) => string,
): Readonly<Record<Id, string>> =>
  Object.fromEntries(resistKinds.map((kind) => [idOf(kind), textOf(resistTexts[kind])])) as Record<
    Id,
    string
  >;

export const resistNames = byId(
  (kind) => kind,
  ({ name }) => name,
);
export const maskLines = byId(
  (kind): `mask-${ResistKind}` => `mask-${kind}`,
  ({ mask }) => mask,
);
export const removeLines = byId(
  (kind): `remove-${ResistKind}` => `remove-${kind}`,
  ({ remove }) => remove,
);
