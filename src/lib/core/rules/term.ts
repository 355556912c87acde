import type { Misfit, Remedy } from '../cell/tub.ts';
import type { PlateRefusal } from '../facts/cathodes.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import type { BitableMetal, MetalFamily, RefusalReason, RefusedMetal } from '../facts/metals.ts';
import type { Remover, ResistKind } from '../facts/resists.ts';
import type { SaltId, SaltRefusal } from '../facts/salts.ts';
import type { Anion } from '../facts/salts/salt-facts.ts';
import type { SupplyKind } from '../facts/supplies.ts';
import type { Use, Water } from '../job/choices.ts';

/*
 * Every word that a text may insert by its id. The words room has a table for each kind, and does not compile
 * while a word is missing. Where two kinds use the same id, a prefix tells them apart.
 */

/** Warnings about what a bath must not be mixed with. */
export type NeverId = 'never-silver' | `never-${Anion}`;

/** Metals refused by a rule of their own, which also says what to do instead. */
type OwnRule = 'chromiumBearing' | 'noData';

/** A clause in a rule's text: why something is refused or needs care, and what to do instead. */
export type ReasonId =
  | `stock-${RefusalReason}`
  | `way-${Exclude<RefusalReason, OwnRule>}`
  | `salt-${SaltRefusal}`
  | `plate-${PlateRefusal}`
  | `nickel-${Use}`
  | 'sale-silver'
  | 'sale-other'
  | `pickle-${Exclude<Anion, 'sulfate'>}`
  | 'resist-hot'
  | 'resist-light'
  | 'film-knobs'
  | 'film-fixed';

/** What removes the resist, in or out of a nitrate bath. */
export type SolventId = Remover | `${Remover}-nitrate`;

export type TermId =
  | BitableMetal
  | RefusedMetal
  | SaltId
  | ResistKind
  | `supply-${SupplyKind}`
  | `element-${ElementSymbol}`
  | `water-${Water}`
  | `group-${MetalFamily}`
  | SolventId
  | Misfit
  | Remedy['way']
  | NeverId
  | ReasonId;
