import { isBitable, metals } from '../facts/metals.ts';
import { findBoughtSalt, findSalt } from '../facts/salts.ts';
import type { Situation } from './rule.ts';
import type { NeverId } from './term.ts';

/** Questions that several rules ask. */

export const isSilver = ({ piece }: Situation): boolean =>
  isBitable(piece.metal) && metals[piece.metal].family === 'silver';

/** Whether silver dissolves from the piece or is already in the bath. */
export const bathHoldsSilver = (situation: Situation): boolean =>
  isSilver(situation) || (situation.bath.dissolved.Ag ?? 0) > 0;

export const hasChloride = ({ bath }: Situation): boolean => findSalt(bath.salt)?.facts.anion === 'chloride';

export const hasAmmonium = ({ bath }: Situation): boolean => findSalt(bath.salt)?.facts.cation === 'ammonium';

export const hasNitrate = ({ bath }: Situation): boolean => findSalt(bath.salt)?.facts.anion === 'nitrate';

/** Which warning about dangerous mixtures a bath needs. @param salt id as bought */
export const neverFamily = (holdsSilver: boolean, salt: string): NeverId =>
  holdsSilver ? 'never-silver' : `never-${findBoughtSalt(salt)?.facts.anion ?? 'nitrate'}`;
