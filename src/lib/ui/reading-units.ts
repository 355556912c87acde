import { getContext, setContext } from 'svelte';
import { defaultReadingUnits } from '$lib/core/job/reading-units.ts';
import type { ReadingUnits } from '$lib/core/job/reading-units.ts';

const key = Symbol('reading-units');

/** Says how lengths and temperatures are read in every component inside this one. */
export const provideReadingUnits = (units: () => ReadingUnits): void => {
  setContext(key, units);
};

/** How lengths and temperatures are read here; in mm and °C where no job says otherwise. */
export const readingUnitsHere = (): (() => ReadingUnits) =>
  getContext<(() => ReadingUnits) | undefined>(key) ?? (() => defaultReadingUnits);
