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

/** A judged pairing, in words. */
export interface PairingAnswer {
  readonly metal: MetalId;
  readonly salt: BathSalt | RefusedSalt;
  readonly verdict: PairingVerdict;
  readonly verdictName: string;
  readonly why: string;
  /** what the rules that spoke say, each by its id */
  readonly lines: readonly { readonly id: string; readonly text: string }[];
  /** what to do instead; empty unless refused */
  readonly instead: readonly string[];
}

/** A metal or a salt by name; crystals and water-free salt make the same bath. */
const nameOf = (id: MetalId | BathSalt | RefusedSalt): string => termText(id).replace(/^anhydrous /, '');

/** The same as a heading. */
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

/** What a judgement says to a reader. */
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

/** A metal in a bath of a salt, opposite a plate of the same metal, in clean water. */
export const answerTo = (metal: MetalId, salt: BathSalt | RefusedSalt): PairingAnswer =>
  answerOf(metal, salt, judgePairing(plainBench(metal, salt)));

const order: readonly PairingVerdict[] = ['good', 'with care', 'refuse'];

/** Every salt against one metal, what goes first. */
export const answersFor = (metal: MetalId): readonly PairingAnswer[] =>
  askedSalts
    .map((salt) => answerTo(metal, salt))
    .sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict));

/** What to take for a metal, by name: what goes well, or with care where nothing does; empty where nothing bites it. */
export function takenFor(metal: MetalId): readonly string[] {
  const salts = saltsFor(plainBench(metal, 'NaCl'));
  return salts
    .filter(({ judgement }) => judgement.verdict === salts[0]?.judgement.verdict)
    .map(({ id }) => nameOf(id));
}
