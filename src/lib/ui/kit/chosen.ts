/** Values ticked, from the text that a draft keeps them in, separated by spaces. */
export const chosenIn = (value: string): readonly string[] => value.split(' ').filter((one) => one !== '');

/** Whether one value is chosen. Only of several are there spaces between; a single choice may be a name with some. */
export const isChosen = (value: string, one: string, many: boolean): boolean =>
  many ? chosenIn(value).includes(one) : value === one;

/** The text with one value ticked or unticked; with a single choice the value itself. */
export function withChoice(value: string, one: string, many: boolean): string {
  if (!many) return one;
  const chosen = chosenIn(value);
  return (chosen.includes(one) ? chosen.filter((other) => other !== one) : [...chosen, one]).join(' ');
}
