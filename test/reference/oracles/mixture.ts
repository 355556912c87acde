import type { ElementSymbol } from '../../../src/lib/core/facts/elements.ts';
import { atomicWeights } from '../../../src/lib/core/facts/elements.ts';
import { substanceOfSalt, substances } from '../../../src/lib/core/facts/substances.ts';
import type {
  ExtraCode,
  HazardCode,
  Substance,
  SubstanceId,
} from '../../../src/lib/core/facts/substances.ts';
import { mixtureLimits as limit, oralBounds, oralEstimates } from './mixture-limits.ts';
import { pictogramsOf } from '../../../src/lib/core/facts/substances/pictograms.ts';
import type { Pictogram } from '../../../src/lib/core/facts/substances/pictograms.ts';
import { labelStatements } from '../../../src/lib/core/facts/substances/statements.ts';
import type { Anion } from '../../../src/lib/core/facts/salts/salt-facts.ts';
import type { ShelfSalt } from '../../../src/lib/core/facts/salts.ts';

/** One ingredient of a mixture, % of its mass. */
export interface Ingredient {
  readonly substance: SubstanceId;
  readonly massPercent: number;
}

/** Classification of a mixture in water by what is in it and how much. */
export interface MixtureClass {
  /** gravest first */
  readonly hazards: readonly HazardCode[];
  readonly extra: readonly ExtraCode[];
  readonly pictograms: readonly Pictogram[];
  readonly signal: 'Danger' | 'Warning' | null;
}

type Known = Substance & { readonly massPercent: number };

/** Statements that a mixture carries once one ingredient passes a limit of its own or the general one. */
const single: readonly (readonly [from: HazardCode, general: number, as?: HazardCode])[] = [
  ['H317', limit.sensitiser],
  ['H334', limit.sensitiser],
  ['H350', limit.carcinogen],
  ['H350i', limit.carcinogen],
  ['H351', limit.suspectedCarcinogen],
  ['H340', limit.mutagen],
  ['H341', limit.suspectedMutagen],
  ['H360D', limit.reproductive],
  ['H360Df', limit.reproductive],
  ['H360FD', limit.reproductive],
  ['H372', limit.organs],
  ['H373', limit.organs],
  ['H372', limit.organsLess, 'H373'],
  ['H335', limit.airways],
];

const sum = (parts: readonly Known[], of: (part: Known) => number): number =>
  parts.reduce((total, part) => total + of(part), 0);
const withCode = (parts: readonly Known[], ...codes: HazardCode[]): Known[] =>
  parts.filter(({ hazards }) => codes.some((code) => hazards.includes(code)));
const share = ({ massPercent }: Known): number => massPercent;

/** Whether an ingredient with limits of its own passes one of them for a statement. */
const ownLimit = (parts: readonly Known[], code: HazardCode): boolean =>
  parts.some(({ from, massPercent }) => from?.[code] !== undefined && massPercent >= from[code]);

function eyesAndSkin(parts: readonly Known[]): HazardCode[] {
  // an ingredient with limits of its own is judged by them alone
  const general = parts.filter(({ from }) => from?.H314 === undefined);
  const corrosive = sum(withCode(general, 'H314'), share);
  const damaging = sum(withCode(general, 'H314', 'H318'), share);
  const eyes = sum(withCode(general, 'H319'), share);
  const skin = sum(withCode(general, 'H315'), share);
  const found: HazardCode[] = [];
  if (corrosive >= limit.skinCorrosion || ownLimit(parts, 'H314')) found.push('H314');
  else if (
    corrosive >= limit.skinIrritation ||
    10 * corrosive + skin >= limit.irritants ||
    ownLimit(parts, 'H315')
  )
    found.push('H315');
  if (damaging >= limit.eyeDamage) found.push('H318');
  else if (
    damaging >= limit.eyeIrritation ||
    10 * damaging + eyes >= limit.irritants ||
    ownLimit(parts, 'H319')
  )
    found.push('H319');
  return found;
}

/** Acute toxicity by mouth, from the estimates of the ingredients added as 100/Σ(c/ATE). */
function swallowed(parts: readonly Known[]): HazardCode[] {
  const load = sum(withCode(parts, 'H301', 'H302'), ({ hazards, oralDose, massPercent }) => {
    const estimate = oralDose ?? (hazards.includes('H301') ? oralEstimates.H301 : oralEstimates.H302);
    return massPercent / estimate;
  });
  if (load === 0) return [];
  const estimate = 100 / load;
  return estimate <= oralBounds.H301 ? ['H301'] : estimate <= oralBounds.H302 ? ['H302'] : [];
}

/** Harm to life in water, each ingredient times its M-factor. */
function water(parts: readonly Known[]): HazardCode[] {
  const acute = sum(
    withCode(parts, 'H400', 'H410'),
    ({ massPercent, multiplier }) => massPercent * (multiplier?.acute ?? 1),
  );
  const chronic = sum(
    withCode(parts, 'H410'),
    ({ massPercent, multiplier }) => massPercent * (multiplier?.chronic ?? 1),
  );
  const found: HazardCode[] = acute >= limit.aquatic ? ['H400'] : [];
  if (chronic >= limit.aquatic) return [...found, 'H410'];
  if (10 * chronic >= limit.aquatic) return [...found, 'H411'];
  return 100 * chronic >= limit.aquatic ? [...found, 'H412'] : found;
}

const dangers: readonly HazardCode[] = [
  'H301',
  'H314',
  'H318',
  'H334',
  'H340',
  'H350',
  'H350i',
  'H360D',
  'H360Df',
  'H360FD',
  'H372',
];

/**
 * Classifies a solution by concentration (CLP Annex I, general and specific limits). The oxidiser class is
 * left out: water takes it away, and it comes back when the solution dries on paper or cloth.
 * It is milder than a label by ingredient; the bottle's own label or data sheet wins over both.
 * @param ingredients what is dissolved; water is the rest
 */
export function classifyMixture(ingredients: readonly Ingredient[]): MixtureClass {
  const parts = ingredients.map(({ substance, massPercent }): Known => ({
    ...substances[substance],
    massPercent,
  }));
  const ones = single.flatMap(([code, general, as = code]) =>
    parts.some(
      ({ hazards, from, massPercent }) => hazards.includes(code) && massPercent >= (from?.[as] ?? general),
    )
      ? [as]
      : [],
  );
  const hazards = labelStatements([...eyesAndSkin(parts), ...swallowed(parts), ...ones, ...water(parts)]);
  const extra = parts.flatMap(({ extra: codes = [], from, massPercent }) =>
    codes.filter((code) => massPercent >= (from?.[code] ?? Infinity)),
  );
  const signal = hazards.some((code) => dangers.includes(code))
    ? 'Danger'
    : hazards.some((code) => code !== 'H411' && code !== 'H412')
      ? 'Warning'
      : null;
  return { hazards, extra, pictograms: pictogramsOf(hazards), signal };
}

/** The substance that stands for a dissolved metal, and grams of it for a gram of metal; null: not classified. */
function metalAs(element: ElementSymbol, anion: Anion): readonly [SubstanceId, number] | null {
  const weight = atomicWeights[element].value;
  if (element === 'Ag') return ['silver-nitrate', 169.872 / weight];
  if (element === 'Cu') return ['copper-sulfate', 249.677 / weight];
  if (element === 'Zn')
    return anion === 'chloride' ? ['zinc-chloride', 136.28 / weight] : ['zinc-sulfate', 287.541 / weight];
  if (element === 'Ni') {
    if (anion === 'chloride') return ['nickel-chloride', 129.593 / weight];
    return anion === 'sulfate' ? ['nickel-sulfate', 154.75 / weight] : ['nickel-nitrate', 182.7 / weight];
  }
  if (element === 'Pb') return ['lead-compounds', 1];
  return element === 'Fe' ? ['iron-chloride', 162.195 / weight] : null;
}

/**
 * What a used bath holds, for `classifyMixture`: its salt, and each dissolved metal as the salt it makes.
 * Lead is counted as the metal, as its entry is.
 * @param massPercent of the bath's own salt, anhydrous
 * @param dissolved kg/m³ by element
 * @param density kg/m³
 */
export function bathIngredients(
  salt: ShelfSalt,
  massPercent: number,
  dissolved: Readonly<Partial<Record<ElementSymbol, number>>>,
  density: number,
): Ingredient[] {
  const { anion, id } = salt.facts;
  const own = substanceOfSalt[id as keyof typeof substanceOfSalt];
  const bathAnion: Anion = anion === 'chloride' || anion === 'sulfate' ? anion : 'nitrate';
  const metalParts = (Object.entries(dissolved) as [ElementSymbol, number][]).flatMap(([element, amount]) => {
    const as = metalAs(element, bathAnion);
    return as === null ? [] : [{ substance: as[0], massPercent: (100 * amount * as[1]) / density }];
  });
  return [{ substance: own, massPercent }, ...metalParts];
}
