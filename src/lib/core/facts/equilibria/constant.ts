import type { Datum } from '../datum.ts';
import type { SourceId } from '../sources.ts';

/** A published value that is not the one in use, kept beside it. */
export interface OtherValue {
  readonly value: number;
  readonly source: SourceId;
  readonly locator: string;
}

/**
 * An equilibrium constant or potential at 25 °C and no ionic strength. Its band spans every value found;
 * the others stand beside the chosen one.
 */
export interface Constant extends Datum {
  readonly others: readonly OtherValue[];
}
