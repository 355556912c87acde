import { isBitable, metals } from '../facts/metals.ts';
import { ammoniumSalts, chlorideSalts, findBoughtSalt } from '../facts/salts.ts';
import type { Situation } from './rule.ts';

/** Questions that several rules ask. */

const silverStock: readonly string[] = ['silver-935-lowtarnish', 'coin-900'];

export const isSilver = ({ piece }: Situation): boolean =>
  isBitable(piece.metal) ? metals[piece.metal].family === 'silver' : silverStock.includes(piece.metal);

/** Silver comes off the piece, or is in the bath already. */
export const bathHoldsSilver = (situation: Situation): boolean =>
  isSilver(situation) || (situation.bath.dissolved.Ag ?? 0) > 0;

export const hasChloride = ({ bath }: Situation): boolean => chlorideSalts.includes(bath.salt);

export const hasAmmonium = ({ bath }: Situation): boolean => ammoniumSalts.includes(bath.salt);

export const hasNitrate = ({ bath }: Situation): boolean =>
  findBoughtSalt(bath.salt)?.facts.anion === 'nitrate' || ['NH4NO3', 'Cu(NO3)2', 'AgNO3'].includes(bath.salt);
