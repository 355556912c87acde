/** Units that a maker may want lengths read back in; with mm and cm a depth stays in mm, its figure in μm. */
export const lengthUnits = ['mm', 'cm', 'in'] as const;
export const temperatureUnits = ['degC', 'degF'] as const;

/** How the maker wants to read amounts. No figure depends on it. */
export interface ReadingUnits {
  readonly length: (typeof lengthUnits)[number];
  readonly temperature: (typeof temperatureUnits)[number];
}

export const defaultReadingUnits: ReadingUnits = { length: 'mm', temperature: 'degC' };

/** What depth and bare area are typed in by who reads lengths so: fields of a draft. */
export const unitsTyped = ({ length }: Pick<ReadingUnits, 'length'>) =>
  length === 'in'
    ? ({ 'piece.depth.unit': 'in', 'piece.openArea.unit': 'in2' } as const)
    : ({ 'piece.depth.unit': 'mm', 'piece.openArea.unit': 'cm2' } as const);

/** A job's reading units; the defaults for a plan that was stored before jobs had any. */
export const readingUnitsOf = (job: { readonly units?: ReadingUnits }): ReadingUnits =>
  job.units ?? defaultReadingUnits;
