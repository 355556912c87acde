/** Bounds of amounts that are typed outside a job's fields. Anything beyond them is a typing error. */
interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** Water in mL, or salt in g, added to a bath at one time. */
export const addedBounds: Bounds = { least: 0, most: 100_000 };

/** Charge of one use of a bath, A·h. */
export const usedBounds: Bounds = { least: 0, most: 1000 };

/** Copies of one label in one print. */
export const labelCopies: Bounds = { least: 0, most: 12 };

/** Copies of a stencil on its page. */
export const stencilCopies: Bounds = { least: 1, most: 200 };

/** Smallest detail of a drawing to keep, mm. */
export const detailBounds: Bounds = { least: 0, most: 5 };

/** Letters of a name that fit beside a piece on a station's card. */
export const mostNameLetters = 16;
