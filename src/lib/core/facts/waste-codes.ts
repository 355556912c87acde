import type { Statement } from './datum.ts';

/** Kinds of waste. */
export type WasteStream = 'bath' | 'rinse' | 'sludge' | 'wipes' | 'solvent' | 'dry-nitrate';
/** Where the waste comes from. */
export type WasteOrigin = 'household' | 'business';

/** A code of the European List of Waste that may apply. The collector decides. */
export interface WasteCode extends Omit<Statement, 'text'> {
  readonly code: string;
  readonly stream: WasteStream;
  readonly origin: WasteOrigin;
}

const code = (code: string, stream: WasteStream, origin: WasteOrigin, locator: string): WasteCode => ({
  code,
  stream,
  origin,
  evidence: 'regulatory',
  source: 'listOfWaste',
  locator,
});

/** A star means hazardous. Chapter 11 applies only to waste from a surface treatment business. */
export const wasteCodes: readonly WasteCode[] = [
  code('20 01 15*', 'bath', 'household', 'alkalines'),
  code('20 01 17*', 'bath', 'household', 'photochemicals'),
  code('20 01 13*', 'solvent', 'household', 'solvents'),
  code('11 01 98*', 'bath', 'business', 'other wastes containing hazardous substances'),
  code('16 10 01*', 'bath', 'business', 'aqueous liquid wastes containing hazardous substances'),
  code('06 03 13*', 'bath', 'business', 'solid salts and solutions containing heavy metals'),
  code('11 01 11*', 'rinse', 'business', 'aqueous rinsing liquids containing hazardous substances'),
  code('11 01 09*', 'sludge', 'business', 'sludges and filter cakes containing hazardous substances'),
  code('15 02 02*', 'wipes', 'business', 'absorbents, filter materials, wiping cloths, protective clothing'),
  code('14 06 03*', 'solvent', 'business', 'other solvents and solvent mixtures'),
  code('16 09 04*', 'dry-nitrate', 'business', 'oxidising substances, not otherwise specified'),
];
