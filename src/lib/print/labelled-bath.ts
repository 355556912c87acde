import { findBoughtSalt } from '../core/facts/salts.ts';
import type { ElementSymbol } from '../core/facts/elements.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import type { MetalGroup } from '../core/facts/metal-groups.ts';
import type { Plan } from '../core/plan/plan.ts';
import { bathHoldsSilver, neverFamily } from '../core/rules/asks.ts';
import { defaultReadingUnits, readingUnitsOf } from '../core/job/reading-units.ts';
import { fromSi } from '../core/units/convert.ts';
import { elementWord } from '$words/away.ts';
import { plain } from '$words/locale.ts';
import { groupNames } from '$words/materials.ts';
import { dissolvedNames, labelTexts } from '$words/papers.ts';
import { figureParts, figureText, fill } from '$words/render.ts';
import { saltWord } from '$words/shelf.ts';
import { jarNames, neverTexts } from '$words/terms.ts';
import { withSymbol, withUnit } from '$words/units.ts';
import { bathHazards, hazardsOf } from './bath-hazards.ts';
import type { BathHazards } from './bath-hazards.ts';

/** Everything on a bath's label. */
export interface LabelledBath {
  readonly head: string;
  /** name of the jar; or a line to write it on */
  readonly jar: string;
  readonly contents: string;
  /** number of metals in it, for the label's height */
  readonly metals: number;
  readonly hazards: BathHazards | null;
  /** what it must never be mixed with */
  readonly never: string;
  readonly dates: readonly string[];
  /** short code of the job; empty for a bath from the shelf */
  readonly code: string;
}

const joined = (text: string, metals: readonly string[], holds: string): string =>
  metals.length === 0 ? text : `${text} ${holds.replace('{metals}', metals.join(', '))}`;

/**
 * The label of the bath that a plan uses, to be filled in by hand.
 * @param jar its name; a line to write it on without one
 */
export function labelOfPlan(plan: Plan, code: string, jar: string = labelTexts.jar): LabelledBath {
  const { job, figures } = plan;
  const units = readingUnitsOf(job);
  const percent = figures.mass_percent;
  const metals = (Object.keys(dissolvedNames) as (keyof typeof dissolvedNames)[]).flatMap((id) => {
    const figure = figures[id];
    if (!figure) return [];
    const { number, unit } = figureParts(figure, units);
    return [`${dissolvedNames[id]}\u00a0${withSymbol(number, unit)}`];
  });
  const text = fill(
    labelTexts.contents,
    {
      metal: job.piece.metal,
      salt: job.bath.salt,
      strength: { value: fromSi(job.bath.strength, 'g/L'), unit: 'g/L' },
      share: { text: percent ? labelTexts.share.replace('{percent}', figureText(percent, units)) : '' },
    },
    units,
  );
  const hazards = bathHazards(plan);
  return {
    head: hazards ? jarNames[hazards.family] : '',
    jar,
    contents: joined(text, metals, labelTexts.holds),
    metals: metals.length,
    hazards,
    never: neverTexts[neverFamily(bathHoldsSilver({ ...job, figures: {} }), job.bath.salt)],
    dates: labelTexts.dates,
    code: code === '' ? '' : labelTexts.job.replace('{code}', code),
  };
}

/** A bath on the shelf. */
export interface ShelfBath {
  readonly name: string;
  readonly group: MetalGroup | 'unknown';
  readonly salt: string;
  /** g of salt as bought, per litre of water */
  readonly strength: number;
  /** mg/L by element */
  readonly dissolved: Readonly<Record<string, number>>;
  /** dates, as the maker writes them */
  readonly madeOn: string;
  readonly lastUsedOn: string;
  readonly chargeAh: number;
}

/** The metal family whose salt counts as the most harmful: that of a brass bath, or of copper alone. */
function familyIn({ group, dissolved }: ShelfBath): MetalFamily | null {
  if (group === 'unknown') return null;
  if (group !== 'copper and brass') return group;
  return (dissolved['Zn'] ?? 0) > 0 ? 'brass' : 'copper';
}

/** The label of a bath on the shelf in its present state. */
export function labelOfShelf(bath: ShelfBath): LabelledBath {
  const held = (Object.entries(bath.dissolved) as [ElementSymbol, number][])
    .filter(([, mgPerLitre]) => mgPerLitre > 0)
    .toSorted(([, a], [, b]) => b - a);
  const metals = held.map(
    ([element, mgPerLitre]) => `${elementWord(element)}\u00a0${withUnit(plain(mgPerLitre, 2), 'mg/L')}`,
  );
  const text = fill(
    labelTexts.contents,
    {
      metal: { text: groupNames[bath.group] },
      salt: { text: saltWord(bath.salt) },
      strength: { value: bath.strength, unit: 'g/L' },
      share: { text: '' },
    },
    defaultReadingUnits,
  );
  const holdsSilver = bath.group === 'silver' || (bath.dissolved['Ag'] ?? 0) > 0;
  const known = findBoughtSalt(bath.salt) !== null;
  return {
    head: bath.name,
    jar: '',
    contents: joined(text, metals, labelTexts.holdsNow),
    metals: metals.length,
    hazards: hazardsOf(familyIn(bath), bath.salt, (bath.dissolved['Pb'] ?? 0) > 0),
    never: known ? neverTexts[neverFamily(holdsSilver, bath.salt)] : labelTexts.unknownSalt,
    dates: labelTexts.datesNow.map((line) =>
      line
        .replace('{made}', bath.madeOn)
        .replace('{used}', bath.lastUsedOn)
        .replace('{charge}', plain(bath.chargeAh, 2)),
    ),
    code: '',
  };
}
