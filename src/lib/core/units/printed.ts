/** mm: the bar that tells whether a printer kept to size; what comes out beyond the others is no printer's fault. */
export const printedBar = { drawn: 100, least: 80, most: 125 } as const;

/** Width of a bath label, mm: what the law asks of a jar of a bath's size. */
export const labelWidth = 105;
