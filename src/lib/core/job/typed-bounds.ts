/** Least and most of what is typed beside a job: anything further out is a slip of the fingers. */
interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** Water in mL or salt in g that goes into a bath at once. */
export const addedBounds: Bounds = { least: 0, most: 100_000 };

/** A·h of one use of a bath. */
export const usedBounds: Bounds = { least: 0, most: 1000 };

/** Copies of one label that are printed at once. */
export const labelCopies: Bounds = { least: 0, most: 12 };

/** Copies of a stencil on its page. */
export const stencilCopies: Bounds = { least: 1, most: 200 };

/** Smallest detail of a drawing that is meant, mm. */
export const detailBounds: Bounds = { least: 0, most: 5 };

/** Letters of a name that fit beside a piece on a station's card. */
export const mostNameLetters = 16;
