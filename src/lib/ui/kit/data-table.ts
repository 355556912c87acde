export interface Column {
  readonly id: string;
  readonly label: string;
  /** The cells of this column are the headers of their rows. */
  readonly isHead?: boolean;
  /** Aligns numbers at the end of the cell, so that they line up. */
  readonly isNumber?: boolean;
}
