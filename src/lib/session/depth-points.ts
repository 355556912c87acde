/** Depths measured in one place after another, um; null where a place was left out or cannot be read. */
export type DepthSlots = readonly (number | null)[];

/** The same with one place told anew: the others stay where they stand. */
export const withDepth = (slots: DepthSlots, place: number, um: number | null): DepthSlots =>
  Array.from({ length: Math.max(slots.length, place + 1) }, (_, n) =>
    n === place ? um : (slots[n] ?? null),
  );

/** Those that count. */
export const depthsIn = (slots: DepthSlots): readonly number[] => slots.filter((um) => um !== null);
