/** Texts of the drawing of the mask. */
export const maskTexts = {
  title: 'The mask from above, and a cut through it after the bite',
  painted: 'painted',
  bare: 'bare',
  back: 'back too',
  liquid: 'liquid',
} as const;

interface Drawn {
  readonly bite: 'one' | 'both' | 'through';
  /** Whether the maker's own drawing is shown. */
  readonly isOwn: boolean;
}

const covered = ({ bite }: Drawn): string =>
  bite === 'both' ? 'Edges and hanger' : 'Back, edges and hanger';
const down = ({ bite }: Drawn): string => (bite === 'through' ? 'falls out' : 'goes down');

/** Caption under the drawing. */
export const maskCaption = (drawn: Drawn): string =>
  `Painted stays high, bare ${down(drawn)}.${drawn.isOwn ? '' : ' The leaf is an example.'}`;

/** What the drawing shows, for people who cannot see it. */
export const maskSummary = (drawn: Drawn): string =>
  `${drawn.isOwn ? 'Your drawing' : 'A leaf as an example'} on the piece: dark is painted, light is bare metal. ` +
  `In the cut below, the metal under the paint stands as high as before; where it is bare it ${down(drawn)}${drawn.bite === 'both' ? ' from both faces' : ''}. ` +
  `${covered(drawn)} are painted too, the hanger up to the liquid.`;
