/**
 * Units in which a maker may read lengths. With mm and cm, depths are shown in mm, and the planned figure in
 * μm.
 */
export const lengthUnits = ['mm', 'cm', 'in'] as const;
export const temperatureUnits = ['degC', 'degF'] as const;

/** Units in which the maker reads amounts. They change no figure. */
export interface ReadingUnits {
  readonly length: (typeof lengthUnits)[number];
  readonly temperature: (typeof temperatureUnits)[number];
}

export const defaultReadingUnits: ReadingUnits = { length: 'mm', temperature: 'degC' };

/** The draft's units for depth and bare area that go with a unit of length. */
export const unitsTyped = ({ length }: Pick<ReadingUnits, 'length'>) =>
  length === 'in'
    ? ({ 'piece.depth.unit': 'in', 'piece.openArea.unit': 'in2' } as const)
    : ({ 'piece.depth.unit': 'mm', 'piece.openArea.unit': 'cm2' } as const);

/** A job's reading units; the defaults for plans stored before jobs had them. */
export const readingUnitsOf = (job: { readonly units?: ReadingUnits }): ReadingUnits =>
  job.units ?? defaultReadingUnits;
