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
 * Every word that a text may ask for by its id. The words room has a table for each kind and does not
 * compile while one is missing. What shares its id with another kind is told apart by what stands before it.
 */

/** What a bath must never meet. */
export type NeverId = 'never-silver' | `never-${Anion}`;

/** Stock that is refused by a rule of its own, which says the way on. */
type OwnRule = 'chromiumBearing' | 'noData';

/** A clause of a rule's text: why something is refused or asks for care, and the way on. */
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

/** What takes the resist off, beside a nitrate bath or another. */
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
