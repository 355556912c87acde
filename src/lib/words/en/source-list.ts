import { citations } from '../../core/facts/cited.ts';
import type { TableId } from '../../core/facts/cited.ts';
import { sources } from '../../core/facts/sources.ts';
import type { Source, SourceId } from '../../core/facts/sources.ts';
import { defaultReadingUnits } from '../../core/job/reading-units.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import { refusalRules, warningRules } from '../../core/rules/index.ts';
import { figureName } from './figures.ts';
import { language } from './locale.ts';
import { isTerm, terms } from './terms.ts';

/** Name of each table of facts. */
export const tableNames: Readonly<Record<TableId, string>> = {
  atomicWeights: 'Atomic weights',
  metals: 'Metals',
  refusedMetals: 'Refused metals',
  refusedStock: 'Refused metals',
  allSalts: 'Salts',
  conductivityLine: 'Conductivity and warmth',
  refusedSalts: 'Refused salts',
  valences: 'Electrons an atom',
  yieldPriors: 'Bite rate',
  offsets: 'Volts that drive no current',
  copperSulfateOffset: 'Volts that drive no current',
  filmTransport: 'What the liquid at the metal can carry',
  passiveIn: 'Metals that cover themselves',
  skinIn: 'Metals that leave a skin',
  cationDoes: 'What a salt’s metal does',
  potentials: 'Electrode potentials',
  plateMetals: 'Plates',
  plateRefusals: 'Refused plates',
  limits: 'Limits',
  airLimits: 'Limits in air',
  practice: 'Practice of the trade',
  advice: 'Advice in words',
  purposeDepths: 'Depths by purpose',
  tools: 'Scales and vessels',
  practicePaces: 'How fast a bite by the clock goes',
  undercutRatio: 'Undercut',
  undercutTable: 'Undercut by depth and opening',
  bankCard: 'Bank card, to measure a photo by',
  classFacts: 'Classes',
  landReserve: 'Thinnest line',
  leadResistance: 'Leads and clips',
  tubCooling: 'Cooling of the tub',
  ventilation: 'Fresh air',
  freeChloride: 'Table salt over what silver takes',
  freeCarbonate: 'Carbonate over what copper takes',
  pHWindows: 'pH at which a metal settles',
  retireAfter: 'When a bath is retired',
  metalLines: 'Lines of law for metal in waste',
  combining: 'Combining masses',
  wasteCodes: 'Codes of waste',
  supplyKinds: 'Supplies',
  resistKinds: 'Resists',
  resistFacts: 'Resists',
  symptomFacts: 'What looks wrong',
  substances: 'Hazards of substances',
  labels: 'Labels',
  hazardStatements: 'Hazard statements',
  extraStatements: 'Hazard statements',
  firstAid: 'Help now',
  minutes: 'Help now',
  worn: 'What to wear',
  letterMinutes: 'Gloves',
  goggleMarks: 'Goggles',
  gloveLayers: 'Gloves',
  wearAdvice: 'What to wear',
  lead: 'Lead in jewellery',
  cadmium: 'Cadmium in jewellery',
  nickelRelease: 'Nickel from jewellery',
  hallmarkFrom: 'Hallmarks',
  lawAmounts: 'The law',
  lawLines: 'The law',
  lawRead: 'The law',
  sources: 'Sources',
};

export const howRead: Readonly<Record<Source['how'], string>> = {
  read: 'Read',
  secondaryCopy: 'Read in a copy',
  memory: 'From memory, unchecked',
  own: 'Made for this work',
};

/** A source in words, with all that relies on it. */
export interface SourceEntry {
  readonly id: SourceId;
  readonly title: string;
  readonly how: string;
  readonly address: string | null;
  /** A table of facts, and which of its entries rely on the source. */
  readonly facts: readonly { readonly table: string; readonly entries: readonly string[] }[];
  readonly rules: readonly string[];
  readonly figures: readonly string[];
}

/** Writes a DOI as a web address. */
const addressOf = ({ address }: Source): string | null =>
  address === undefined ? null : address.replace(/^doi:/, 'https://doi.org/');

/**
 * Every source by title, with the facts, rules and figures that name it.
 * @param figures figure ids by source id, read from the workings of plans
 */
export function sourceList(figures: Readonly<Record<string, readonly FigureId[]>>): readonly SourceEntry[] {
  const uses = new Map<SourceId, Map<string, Set<string>>>();
  for (const { source, table, path, locator } of citations()) {
    const tables = uses.get(source) ?? new Map<string, Set<string>>();
    const entries = tables.get(tableNames[table]) ?? new Set<string>();
    const [key = ''] = path;
    const entry = isTerm(key) ? terms[key] : locator;
    if (entry !== '') entries.add(entry);
    uses.set(source, tables.set(tableNames[table], entries));
  }
  const rules: readonly { readonly id: string; readonly sources: readonly string[] }[] = [
    ...refusalRules,
    ...warningRules,
  ];
  return (Object.keys(sources) as SourceId[])
    .map((id): SourceEntry => ({
      id,
      title: sources[id].title,
      how: howRead[sources[id].how],
      address: addressOf(sources[id]),
      facts: [...(uses.get(id) ?? [])].map(([table, entries]) => ({ table, entries: [...entries] })),
      rules: rules.filter((rule) => rule.sources.includes(id)).map((rule) => rule.id.replaceAll('-', ' ')),
      figures: (figures[id] ?? []).map((figure) => figureName(figure, defaultReadingUnits)),
    }))
    .sort((a, b) => a.title.localeCompare(b.title, language));
}
