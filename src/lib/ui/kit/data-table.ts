/** A column of a table. */
export interface Column {
  readonly id: string;
  readonly label: string;
  /** names its row */
  readonly isHead?: boolean;
  /** figures stand at the end of their cell, one under another */
  readonly isNumber?: boolean;
}
