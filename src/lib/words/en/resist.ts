import { clockTime, spanText } from './times.ts';

/** Texts of the screens that ask for the resist, and on which the piece is cleaned and masked. */
export const resistTexts = {
  titles: {
    kind: 'What keeps the bath off?',
    clean: 'Clean it until water lies flat',
    mask: 'Mask it',
    area: 'How much is bare now?',
  },
  waterTest: 'Left, clean: water is one film. Right, greasy: water forms beads.',
  clean: 'clean',
  greasy: 'grease left',
  firestain: 'Grey firestain on sterling bites in patches: take it off with abrasive, or expect it to show.',
  thinnest: 'True size.',
};

/** Drying time of the resist, and its clock. */
export const dryingTexts = {
  dries: (time: string): string =>
    `Let it dry ${time}: common practice, no source. The bottle’s own label wins.`,
  painted: 'It is painted',
  /** @param readyAt ms since 1970 */
  left: (left: number, readyAt: number): string => `${spanText(left)} to go, dry at ${clockTime(readyAt)}`,
  over: 'Its time is up. Touch an edge: if it is tacky, wait on.',
  again: 'Painted again: start anew',
} as const;
