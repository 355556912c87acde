/**
 * The test bar that shows whether a printer kept to size, mm. A length outside `least` to `most` is not the
 * printer's scaling but a misreading, or a print not made at 100 %.
 */
export const printedBar = { drawn: 100, least: 80, most: 125 } as const;

/** Width of a bath label, mm: the law's least width for a container as large as a bath's jar. */
export const labelWidth = 105;
