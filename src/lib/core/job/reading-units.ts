/** Units that a maker may want lengths read back in; a depth stays in mm, its figure in μm. */
export const lengthUnits = ['mm', 'cm', 'in'] as const;
export const temperatureUnits = ['degC', 'degF'] as const;

/** How the maker wants to read amounts. No figure depends on it. */
export interface ReadingUnits {
  readonly length: (typeof lengthUnits)[number];
  readonly temperature: (typeof temperatureUnits)[number];
}

export const defaultReadingUnits: ReadingUnits = { length: 'mm', temperature: 'degC' };

/** A job's reading units; the defaults for a plan that was stored before jobs had any. */
export const readingUnitsOf = (job: { readonly units?: ReadingUnits }): ReadingUnits =>
  job.units ?? defaultReadingUnits;
