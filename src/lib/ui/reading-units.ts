import { getContext, setContext } from 'svelte';
import { defaultReadingUnits } from '$lib/core/job/reading-units.ts';
import type { ReadingUnits } from '$lib/core/job/reading-units.ts';

const key = Symbol('reading-units');

/** Sets the units of lengths and temperatures for all components inside this one. */
export const provideReadingUnits = (units: () => ReadingUnits): void => {
  setContext(key, units);
};

/** The units of lengths and temperatures that apply here: mm and °C where no job sets others. */
export const readingUnitsHere = (): (() => ReadingUnits) =>
  getContext<(() => ReadingUnits) | undefined>(key) ?? (() => defaultReadingUnits);
