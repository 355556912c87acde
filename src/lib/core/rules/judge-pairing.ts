import type { Cathode, Piece, Water } from '../cell/setup.ts';
import { isBitable, metals, refusedMetals } from '../facts/metals.ts';
import type { BitableMetal, MetalFamily, RefusedMetal } from '../facts/metals.ts';
import { bathSalts, findBoughtSalt, refusedSalts, saltIdOf } from '../facts/salts.ts';
import type { BathSalt, RefusedSalt, SaltId } from '../facts/salts.ts';
import type { Anion } from '../facts/salts/salt-facts.ts';
import type { ResistKind } from '../facts/resists.ts';
import { si } from '../units/quantity.ts';
import { refusalRules, warningRules } from './index.ts';
import type { RefusalId, WarningId } from './index.ts';
import type { Params, Situation, StepId } from './rule.ts';
import type { ReasonId } from './term.ts';

/*
 * Pairings are judged by the same rules that refuse and warn in a plan. A test compares the verdicts of the
 * whole table with the solubility of the salt that forms at the piece. So solubility alone never decides.
 * Aluminium is refused, because chloride pits it and it gives off gas without current; nickel silver and
 * steel bite in chloride and passivate in other baths. Reconsider when a metal has no rule yet.
 */

/** What a pairing consists of. */
export interface Meeting {
  readonly metal: BitableMetal | RefusedMetal;
  readonly salt: SaltId;
  readonly plate: Cathode['metal'];
  readonly water: Water;
  readonly resist: ResistKind;
}

export type PairingVerdict = 'good' | 'with care' | 'refuse';

/** One rule that applies, with the parameters of its text. */
export interface Spoken<Id extends string> {
  readonly rule: Id;
  readonly step: StepId;
  readonly params: Params;
}

/** Id of the sentence about the chemistry: `silver-nitrate`, `salt-ammonium`, `stock-gold`. */
export type WhyId = `${MetalFamily}-${Anion}` | Extract<ReasonId, `salt-${string}` | `stock-${string}`>;

export interface Judgement {
  readonly verdict: PairingVerdict;
  readonly why: WhyId;
  readonly refusals: readonly Spoken<RefusalId>[];
  readonly cares: readonly Spoken<WarningId>[];
}

/** Refusals that depend on the pairing. All others depend on amounts, temperatures, sizes or the supply. */
export const pairingBlocks: readonly RefusalId[] = [
  'chromium-anode',
  'silver-with-ammonium',
  'ammonium-nitrate',
  'chloride-on-silver',
  'mixed-metals',
  'chromium-bath',
  'base-plate-with-silver',
  'passive-metal',
  'unsuitable-stock',
  'metal-without-data',
  'salt-no-bath',
  'unfit-plate',
  'lead-for-sale',
  'salt-closed-to-public',
];

/** Warnings that change a verdict from good to with care. */
export const pairingCares: readonly WarningId[] = [
  'leaded-brass',
  'nickel-skin',
  'stainless-plate',
  'tap-water-clouds',
  'silver-sulfate-film',
  'tin-skin',
  'other-metal-in-bath',
  'chlorine-room-unknown',
  'weak-resist',
];

const length = (mm: number) => si<'length'>(mm / 1000);

/** An ordinary set-up for a pairing. The rules above look at nothing else in it. */
function benchOf({ metal, salt, plate, water, resist }: Meeting): Situation {
  const piece: Piece = {
    metal,
    shape: 'rectangle',
    width: length(30),
    height: length(40),
    thickness: length(1),
    faces: 'front',
    faceArea: si<'area'>(1.2e-3),
    openArea: si<'area'>(4e-4),
    openAreaFrom: 'area',
    depth: length(0.1),
    count: 1,
    through: false,
    at: null,
    design: null,
  };
  return {
    piece,
    cathode: {
      metal: plate,
      width: length(30),
      height: length(40),
      gap: length(30),
      sideways: length(0),
      faces: 'both',
    },
    tub: { kind: 'box', length: length(120), width: length(80), fill: length(60) },
    bath: {
      salt,
      strength: si<'massConcentration'>(50),
      water,
      temperature: si<'temperature'>(293.15),
      record: null,
      dissolved: {},
      chargePassed: si<'charge'>(0),
    },
    resist,
    supply: {
      control: 'volts',
      kind: 'bench',
      showsAmps: true,
      leads: null,
      volts: si<'voltage'>(5),
      maxAmps: si<'current'>(2),
    },
    place: { use: 'home', room: null, country: null, mayTreat: false },
    figures: {},
  };
}

/** Id of the sentence that says how metal and salt react, or why one of them is refused. */
function whyOf(metal: Meeting['metal'], salt: SaltId): WhyId {
  if (!isBitable(metal)) return `stock-${refusedMetals[metal]}`;
  const bought = findBoughtSalt(salt);
  if (bought) return `${metals[metal].family}-${bought.facts.anion}`;
  const id = saltIdOf(salt);
  return `salt-${id !== null && id in refusedSalts ? refusedSalts[id as keyof typeof refusedSalts] : 'poorBath'}`;
}

/**
 * Judges the pairing in a job, by the rules that also judge its plan.
 * @param situation the whole set-up, with or without figures
 */
export function judgeSituation(situation: Situation): Judgement {
  const refusals = refusalRules.flatMap(({ id, step, applies }): Spoken<RefusalId>[] => {
    const params = pairingBlocks.includes(id) ? applies(situation) : null;
    return params === null ? [] : [{ rule: id, step, params }];
  });
  // salt water needs an open window in a room of any size
  const anyRoom = { ...situation, place: { ...situation.place, room: null } };
  const cares = warningRules.flatMap(({ id, step, applies }): Spoken<WarningId>[] => {
    const params = pairingCares.includes(id) ? applies(anyRoom) : null;
    return params === null ? [] : [{ rule: id, step, params }];
  });
  const why = whyOf(situation.piece.metal, situation.bath.salt);
  if (refusals.length > 0) return { verdict: 'refuse', why, refusals, cares: [] };
  return { verdict: cares.length > 0 ? 'with care' : 'good', why, refusals, cares };
}

/** Judges a pairing in an ordinary set-up and a room of unknown size. */
export const judgePairing = (meeting: Meeting): Judgement => judgeSituation(benchOf(meeting));

const order: readonly PairingVerdict[] = ['good', 'with care', 'refuse'];

/** Alternatives with their judgements, the best first, without refused ones; equal ones keep their order. */
const ranked = <T extends string>(ids: readonly T[], judge: (id: T) => Judgement) =>
  ids
    .map((id) => ({ id, judgement: judge(id) }))
    .filter(({ judgement }) => judgement.verdict !== 'refuse')
    .sort((a, b) => order.indexOf(a.judgement.verdict) - order.indexOf(b.judgement.verdict));

/**
 * Bath salts that go with this metal on a plate of the same metal, the best first. Empty for a metal that
 * nothing here etches.
 */
export const saltsFor = (meeting: Meeting): { id: BathSalt; judgement: Judgement }[] =>
  ranked(Object.keys(bathSalts) as BathSalt[], (salt) =>
    judgePairing({ ...meeting, salt, plate: meeting.metal, water: 'deionised' }),
  );

/** Plates that go with this metal and salt, the best first. */
export const platesFor = (meeting: Meeting): { id: Cathode['metal']; judgement: Judgement }[] =>
  ranked([meeting.metal, 'C11000', 'C26000', 'sterling-925', 'stainless'] as const, (plate) =>
    judgePairing({ ...meeting, plate }),
  ).filter(({ id }, i, all) => all.findIndex((one) => one.id === id) === i);

/**
 * One cell of the table of pairings. It assumes a plate of the piece's own metal, clean water and a resist
 * that holds.
 */
export interface MatrixCell {
  readonly metal: Meeting['metal'];
  readonly salt: BathSalt | RefusedSalt;
  readonly judgement: Judgement;
}

/** Every known metal with every known salt, row by row, for the page with the whole table. */
export const pairingMatrix = (): MatrixCell[] =>
  ([...Object.keys(metals), ...Object.keys(refusedMetals)] as Meeting['metal'][]).flatMap((metal) =>
    ([...Object.keys(bathSalts), ...Object.keys(refusedSalts)] as (BathSalt | RefusedSalt)[]).map((salt) => ({
      metal,
      salt,
      judgement: judgePairing({ metal, salt, plate: metal, water: 'deionised', resist: 'vinyl' }),
    })),
  );
