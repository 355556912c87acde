import type { Backing } from './first-aid.ts';
import type { SourceId } from './sources.ts';
import { labelOf, labels, leadLabel, substances } from './substances.ts';
import type {
  ExtraCode,
  HazardCode,
  Pictogram,
  Substance,
  SubstanceId,
  SubstanceLabel,
} from './substances.ts';
import { pictogramsOf } from './substances/pictograms.ts';
import {
  acetateGloves,
  acetoneGloves,
  alcoholGloves,
  doubled,
  forWater,
  lyeGloves,
  spiritGloves,
} from './wear/gloves.ts';
import type { Glove } from './wear/gloves.ts';

export { gloveLayers, goggleMarks, letterMinutes } from './wear/gloves.ts';
export type { Glove, GloveMaterial, Verdict } from './wear/gloves.ts';

/**
 * Classification of what is in the bottle. If the bottle's own label or data sheet differs, it takes
 * precedence.
 */
export interface WearLabel {
  readonly signal: 'Danger' | 'Warning' | null;
  readonly hazards: readonly (HazardCode | ExtraCode)[];
  readonly pictograms: readonly Pictogram[];
  readonly source: SourceId;
}

/**
 * One salt, bath, solvent, helper or by-product, and what to wear for it. Its texts are in the words room
 * under the same id.
 */
export interface Worn {
  readonly group: 'salt' | 'bath' | 'solvent' | 'helper' | 'product';
  readonly label: WearLabel;
  readonly gloves: readonly Glove[];
  readonly eyes: 'goggles' | 'goggles-mist' | 'goggles-and-shield';
  readonly body: 'apron' | 'cotton' | 'waterproof';
  readonly air: 'no-dust' | 'open-bath' | 'chlorine' | 'vapour' | 'still' | 'leave' | 'damp' | 'handed-over';
  readonly aid:
    'irritant' | 'oxidiser' | 'metal' | 'silver' | 'solvent' | 'lye' | 'mild' | 'gas' | 'nickel' | 'poison';
}

const ofSubstance = (id: SubstanceId): WearLabel => {
  const { extra = [] }: Substance = substances[id];
  const label = labelOf(id);
  return { ...label, hazards: [...label.hazards, ...extra] };
};

/** Several labels as one; its pictograms follow from the joined hazard statements. */
const together = (...parts: readonly SubstanceLabel[]): WearLabel => {
  const hazards = [...new Set(parts.flatMap((part) => part.hazards))];
  return { signal: 'Danger', hazards, pictograms: pictogramsOf(hazards), source: 'clpAnnexVI' };
};

const salt = (id: SubstanceId, aid: Worn['aid'], gloves = forWater): Worn => ({
  group: 'salt',
  label: ofSubstance(id),
  gloves,
  eyes: 'goggles',
  body: 'apron',
  air: 'no-dust',
  aid,
});

const bath = (label: WearLabel, air: Worn['air'], aid: Worn['aid'], gloves = forWater): Worn => ({
  group: 'bath',
  label,
  gloves,
  eyes: 'goggles-mist',
  body: 'apron',
  air,
  aid,
});

const solvent = (id: SubstanceId, gloves: readonly Glove[]): Worn => ({
  group: 'solvent',
  label: ofSubstance(id),
  gloves,
  eyes: 'goggles',
  body: 'cotton',
  air: 'vapour',
  aid: 'solvent',
});

const product = (id: SubstanceId, air: Worn['air'], aid: Worn['aid'], gloves = forWater): Worn => ({
  group: 'product',
  label: ofSubstance(id),
  gloves,
  eyes: 'goggles',
  body: 'apron',
  air,
  aid,
});

/** Everything that a maker may have open while working. */
export const worn = {
  'sodium-nitrate': salt('sodium-nitrate', 'oxidiser'),
  'potassium-nitrate': salt('potassium-nitrate', 'oxidiser'),
  'table-salt': salt('sodium-chloride', 'mild'),
  'potassium-chloride': salt('potassium-chloride', 'mild'),
  'copper-sulfate': salt('copper-sulfate', 'metal'),
  'sodium-sulfate': salt('sodium-sulfate', 'mild'),
  'potassium-sulfate': salt('potassium-sulfate', 'mild'),
  'ammonium-nitrate': salt('ammonium-nitrate', 'oxidiser'),
  'ammonium-chloride': salt('ammonium-chloride', 'irritant'),
  'ammonium-sulfate': salt('ammonium-sulfate', 'mild'),
  'copper-nitrate': salt('copper-nitrate', 'metal'),
  'zinc-sulfate': salt('zinc-sulfate', 'metal'),
  'silver-nitrate': salt('silver-nitrate', 'silver'),
  'iron-chloride': salt('iron-chloride', 'metal'),
  'baking-soda': salt('sodium-bicarbonate', 'mild'),
  'citric-acid': salt('citric-acid', 'irritant'),
  'sodium-citrate': salt('sodium-citrate', 'mild'),
  'sodium-acetate': salt('sodium-acetate', 'mild'),
  thiosulfate: salt('sodium-thiosulfate', 'mild'),
  'epsom-salt': salt('magnesium-sulfate', 'mild'),
  'silver-bath': bath(labels.usedBath.silver, 'open-bath', 'silver'),
  'copper-bath': bath(labels.usedBath.copper, 'open-bath', 'metal'),
  'salt-water-bath': bath(labels.usedBath.copper, 'chlorine', 'metal'),
  'leaded-brass-bath': bath(together(labels.usedBath.brass, leadLabel), 'chlorine', 'poison', doubled),
  'nickel-bath': bath(labels.usedBath.nickel, 'chlorine', 'nickel', doubled),
  'iron-bath': bath(labels.usedBath.iron, 'chlorine', 'metal'),
  'yellow-bath': bath(ofSubstance('sodium-chromate'), 'handed-over', 'poison', doubled),
  acetone: solvent('acetone', acetoneGloves),
  'ethyl-acetate': solvent('ethyl-acetate', acetateGloves),
  isopropanol: solvent('isopropanol', alcoholGloves),
  ethanol: solvent('ethanol', alcoholGloves),
  'white-spirit': solvent('white-spirit', spiritGloves),
  lye: {
    group: 'helper',
    label: ofSubstance('sodium-hydroxide'),
    gloves: lyeGloves,
    eyes: 'goggles-and-shield',
    body: 'waterproof',
    air: 'still',
    aid: 'lye',
  },
  'soda-ash': { ...salt('sodium-carbonate', 'irritant'), group: 'helper' },
  chlorine: product('chlorine', 'leave', 'gas'),
  hydrogen: product('hydrogen', 'open-bath', 'gas'),
  ammonia: product('ammonia', 'leave', 'gas'),
  'brown-gas': product('nitrogen-dioxide', 'leave', 'gas'),
  hypochlorite: product('sodium-hypochlorite', 'leave', 'lye'),
  chlorate: product('sodium-chlorate', 'damp', 'oxidiser'),
  nitrite: product('sodium-nitrite', 'no-dust', 'poison'),
  'silver-chloride': product('silver-chloride', 'damp', 'silver'),
  'copper-sludge': product('copper-hydroxide', 'damp', 'metal'),
  'green-sludge': product('copper-carbonate', 'damp', 'metal'),
  'white-film': product('copper-one-chloride', 'damp', 'metal'),
  'nickel-sludge': product('nickel-hydroxide', 'damp', 'nickel', doubled),
} as const satisfies Record<string, Worn>;

export type ThingId = keyof typeof worn;

/** What to wear on eyes, body and against vapour. It is our advice, based on the classes above. */
export const wearAdvice = {
  evidence: 'commonPractice',
  source: 'wearAdvice',
  locator: 'eyes, body and air by task',
} as const satisfies Backing;
