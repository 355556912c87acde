/** The screens that ask for the resist, and clean and mask the piece. */
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
  thinnest: 'About as thin as a resist line may be for this depth.',
};
