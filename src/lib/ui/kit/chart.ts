/** What a chart shows, in the values of its axes. */
export interface ChartAxis {
  readonly title: string;
  /** from and to */
  readonly domain: readonly [number, number];
  /** values that are marked; chosen by the scale where none are given */
  readonly ticks?: readonly number[];
  readonly text: (value: number) => string;
}

export interface ChartPoint {
  readonly x: number;
  readonly y: number;
}

/** A line through points. */
export interface ChartLine {
  readonly id: string;
  readonly points: readonly ChartPoint[];
  /** main: the one that matters. second: told apart by its dashes. thin: beside them. */
  readonly kind: 'main' | 'second' | 'thin';
  /** stands at the line's end */
  readonly label?: string;
}

/** A hatched field between a lower and an upper line. */
export interface ChartBand {
  readonly id: string;
  readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}

export interface ChartDot extends ChartPoint {
  readonly id: string;
  /** drawn open: it stands apart */
  readonly isOpen?: boolean;
  readonly label?: string;
}

/** From the least to the greatest of some values. */
export const extentOf = (values: readonly number[]): readonly [number, number] => [
  Math.min(...values),
  Math.max(...values),
];
