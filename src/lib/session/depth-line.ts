/** The wanted depth as the list of jobs shows and searches it: as typed, with its unit. */
export const depthLine = ({
  'piece.depth': typed = '',
  'piece.depth.unit': unit = 'mm',
}: Readonly<Record<string, string>>): string => `${typed} ${unit === 'in' ? 'in' : 'mm'}`;
