/** The wanted depth of a stored draft as the list of jobs shows it, and as it is looked for: as typed, with its unit. */
export const depthLine = ({
  'piece.depth': typed = '',
  'piece.depth.unit': unit = 'mm',
}: Readonly<Record<string, string>>): string => `${typed} ${unit === 'in' ? 'in' : 'mm'}`;
