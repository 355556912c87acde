import { judgePairing, saltsFor } from '../../core/rules/judge-pairing.ts';
import type { Judgement, Meeting, PairingVerdict } from '../../core/rules/judge-pairing.ts';
import { defaultReadingUnits } from '../../core/job/reading-units.ts';
import { metals, refusedMetals } from '../../core/facts/metals.ts';
import { bathSalts, refusedSalts } from '../../core/facts/salts.ts';
import type { BathSalt, RefusedSalt } from '../../core/facts/salts.ts';
import { verdictNames, whyText } from './pairings.ts';
import { fill, termText } from './render.ts';
import { cautionTexts, refusalTexts } from './rules.ts';

type MetalId = Meeting['metal'];

/** The judgement on a pairing, in words. */
export interface PairingAnswer {
  readonly metal: MetalId;
  readonly salt: BathSalt | RefusedSalt;
  readonly verdict: PairingVerdict;
  readonly verdictName: string;
  readonly why: string;
  /** Texts of the rules that applied, each with its id. */
  readonly lines: readonly { readonly id: string; readonly text: string }[];
  /** What to do instead; empty unless the pairing is refused. */
  readonly instead: readonly string[];
}

/** Name of a metal or a salt. Crystals and water-free salt share a name, since they make the same bath. */
const nameOf = (id: MetalId | BathSalt | RefusedSalt): string => termText(id).replace(/^anhydrous /, '');

/** The same name, with a capital for a heading. */
export function named(id: MetalId | BathSalt | RefusedSalt): string {
  const name = nameOf(id);
  return name.charAt(0).toUpperCase() + name.slice(1);
}

export const askedMetals = [...Object.keys(metals), ...Object.keys(refusedMetals)] as readonly MetalId[];
export const askedSalts = [...Object.keys(bathSalts), ...Object.keys(refusedSalts)] as readonly (
  BathSalt | RefusedSalt
)[];

export const isAsked = (id: string): id is MetalId => askedMetals.some((metal) => metal === id);

const plainBench = (metal: MetalId, salt: BathSalt | RefusedSalt): Meeting => ({
  metal,
  salt,
  plate: metal,
  water: 'deionised',
  resist: 'vinyl',
});

/** Puts a judgement into words. */
export function answerOf(metal: MetalId, salt: BathSalt | RefusedSalt, judgement: Judgement): PairingAnswer {
  const { verdict, why, refusals, cares } = judgement;
  return {
    metal,
    salt,
    verdict,
    verdictName: verdictNames[verdict],
    why: whyText(why),
    lines: [
      ...refusals.map(({ rule, params }) => ({
        id: rule,
        text: fill(refusalTexts[rule].text, params, defaultReadingUnits),
      })),
      ...cares.map(({ rule, params }) => ({
        id: rule,
        text: fill(cautionTexts[rule], params, defaultReadingUnits),
      })),
    ],
    instead: [
      ...new Set(
        refusals.map(({ rule, params }) => fill(refusalTexts[rule].instead, params, defaultReadingUnits)),
      ),
    ],
  };
}

/** Judges a metal in a clean bath of a salt, with a plate of the same metal. */
export const answerTo = (metal: MetalId, salt: BathSalt | RefusedSalt): PairingAnswer =>
  answerOf(metal, salt, judgePairing(plainBench(metal, salt)));

const order: readonly PairingVerdict[] = ['good', 'with care', 'refuse'];

/** Every salt with one metal, those that may be used first. */
export const answersFor = (metal: MetalId): readonly PairingAnswer[] =>
  askedSalts
    .map((salt) => answerTo(metal, salt))
    .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict));

/**
 * Names of the salts for a metal: those that go well, or else those that need care; empty where none bites
 * it.
 */
export function takenFor(metal: MetalId): readonly string[] {
  const salts = saltsFor(plainBench(metal, 'NaCl'));
  return salts
    .filter(({ judgement }) => judgement.verdict === salts[0]?.judgement.verdict)
    .map(({ id }) => nameOf(id));
}
