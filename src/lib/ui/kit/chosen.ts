/** Values ticked, from the text that a draft keeps them in, separated by spaces. */
export const chosenIn = (value: string): readonly string[] => value.split(' ').filter((one) => one !== '');

/** The text with one value ticked or unticked; with a single choice the value itself. */
export function withChoice(value: string, one: string, many: boolean): string {
  if (!many) return one;
  const chosen = chosenIn(value);
  return (chosen.includes(one) ? chosen.filter((other) => other !== one) : [...chosen, one]).join(' ');
}
