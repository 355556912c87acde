/** Id of the field for the nth measured depth, counted from 0. */
export const depthId = (n: number): string => (n === 0 ? 'result.depth' : `result.depth-${String(n + 1)}`);
