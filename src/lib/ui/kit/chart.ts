/** One axis of a chart, in the unit of its values. */
export interface ChartAxis {
  readonly title: string;
  /** First and last value. */
  readonly domain: readonly [number, number];
  /** Values that get a tick; without them the scale chooses. */
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
  /** main: the line that matters most. second: dashed, to tell it from the main line. thin: for reference. */
  readonly kind: 'main' | 'second' | 'thin';
  /** Shown at the end of the line. */
  readonly label?: string;
}

/** A hatched field between a lower and an upper line. */
export interface ChartBand {
  readonly id: string;
  readonly points: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}

export interface ChartDot extends ChartPoint {
  readonly id: string;
  /** Draws an open circle, for a point that lies off the others. */
  readonly isOpen?: boolean;
  readonly label?: string;
}

/** The least and the greatest of some values. */
export const extentOf = (values: readonly number[]): readonly [number, number] => [
  Math.min(...values),
  Math.max(...values),
];
