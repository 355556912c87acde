/** The id of the field for the nth measured depth, from 0. */
export const depthId = (n: number): string => (n === 0 ? 'result.depth' : `result.depth-${String(n + 1)}`);
