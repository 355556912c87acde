/** Texts of the parts that all screens are built from. */
export const kitTexts = {
  less: (label: string): string => `less: ${label}`,
  more: (label: string): string => `more: ${label}`,
  unit: (label: string): string => `unit: ${label}`,
  back: 'Back',
  goOn: 'Continue',
  noNumber: 'Type a number.',
  problem: 'There is a problem',
};
