import type { ResistKind } from '../../core/facts/resists.ts';

/** Each resist in a line: how well it masks, and how it comes off. Common practice, no source. */
export const resistNotes: Readonly<Record<ResistKind, { readonly label: string; readonly hint: string }>> = {
  'nail-varnish': { label: 'Nail varnish', hint: 'Masks well in two coats. Comes off with acetone.' },
  'paint-pen': { label: 'Paint pen', hint: 'Good for drawing. Comes off with acetone.' },
  'permanent-marker': {
    label: 'Permanent marker',
    hint: 'Weak: three layers and a gentle bite. Comes off with alcohol.',
  },
  vinyl: { label: 'Vinyl sticker', hint: 'Sharp edges, masks very well. Peels off.' },
  toner: { label: 'Toner, ironed on', hint: 'Fine lines, pinholes to touch up. Comes off with acetone.' },
  'dry-film': {
    label: 'Dry film',
    hint: 'Finest lines, needs light and developer. Its maker says how it strips.',
  },
  asphaltum: {
    label: 'Asphaltum',
    hint: 'The old stop-out, masks best when dry. Comes off with white spirit.',
  },
};
