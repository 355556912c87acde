import type { Datum } from '../../../src/lib/core/facts/datum.ts';
import type { OracleSourceId } from './sources.ts';

/** As `Constant` of the facts, from sources that only these tests draw on. */
export interface OracleConstant extends Omit<Datum, 'source'> {
  readonly source: OracleSourceId;
  readonly others: readonly {
    readonly value: number;
    readonly source: OracleSourceId;
    readonly locator: string;
  }[];
}
