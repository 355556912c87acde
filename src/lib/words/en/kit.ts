/** Words of the parts that every screen is made of. */
export const kitTexts = {
  less: (label: string): string => `less: ${label}`,
  more: (label: string): string => `more: ${label}`,
  unit: (label: string): string => `unit: ${label}`,
  back: 'Back',
  goOn: 'Continue',
  noNumber: 'Type a number.',
  problem: 'There is a problem',
};
