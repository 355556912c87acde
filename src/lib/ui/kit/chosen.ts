/** The ticked values. A draft stores them as one text, separated by spaces. */
export const chosenIn = (value: string): readonly string[] => value.split(' ').filter((one) => one !== '');

/**
 * Whether a value is chosen. Only a multiple choice is split at spaces: a single value may contain spaces
 * itself.
 */
export const isChosen = (value: string, one: string, many: boolean): boolean =>
  many ? chosenIn(value).includes(one) : value === one;

/** The stored text after one value is ticked or unticked. A single choice stores the value itself. */
export function withChoice(value: string, one: string, many: boolean): string {
  if (!many) return one;
  const chosen = chosenIn(value);
  return (chosen.includes(one) ? chosen.filter((other) => other !== one) : [...chosen, one]).join(' ');
}
