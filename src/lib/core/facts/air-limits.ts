import type { Datum } from './datum.ts';
import type { SubstanceId } from './substances.ts';

/**
 * What a limit means: average over a shift, average over 15 minutes, never to be exceeded, danger to life, or
 * smelt from here.
 */
export type LimitKind = 'shift' | 'short' | 'ceiling' | 'danger' | 'odour';

/** One limit in air, in the unit that the authority uses. */
export interface AirLimit extends Datum {
  readonly substance: SubstanceId;
  readonly kind: LimitKind;
  /** whose limit it is */
  readonly authority: string;
}

const limit = (
  substance: SubstanceId,
  kind: LimitKind,
  authority: string,
  value: number,
  unit: 'ppm' | 'mg/m3',
  from: Pick<Datum, 'evidence' | 'source' | 'locator'>,
): AirLimit => ({
  substance,
  kind,
  authority,
  value,
  unit,
  uncertainty: { kind: 'exact' },
  validFor: {},
  ...from,
});

const read = (source: Datum['source'], locator: string) =>
  ({ evidence: 'regulatory', source, locator }) as const;
const recalled = (locator: string) => ({ evidence: 'fromMemory', source: 'memory', locator }) as const;

/**
 * Limits in air for the gases and vapours of this work. They are made for workplaces; at home they only show
 * how dangerous a substance is. Check your country.
 */
export const airLimits: readonly AirLimit[] = [
  limit('chlorine', 'short', 'EU', 0.5, 'ppm', read('scoel76', '15 minutes')),
  limit(
    'chlorine',
    'short',
    'UK, FR, FI, AT, DE',
    0.5,
    'ppm',
    read('serChlorine', 'national limits, 1.5 mg/m³'),
  ),
  limit('chlorine', 'ceiling', 'OSHA', 1, 'ppm', read('niosh1', 'OSHA PEL')),
  limit('chlorine', 'ceiling', 'NIOSH', 0.5, 'ppm', read('niosh1', 'NIOSH REL, 15 minutes')),
  limit('chlorine', 'danger', 'NIOSH', 10, 'ppm', read('niosh1', 'IDLH')),
  limit('chlorine', 'odour', 'SCOEL', 0.2, 'ppm', read('scoel76', 'most people')),
  limit('chlorine', 'short', 'ACGIH', 0.4, 'ppm', recalled('2018; older pages say 1')),
  limit('ammonia', 'shift', 'OSHA', 50, 'ppm', read('oshaLimits', 'ammonia')),
  limit('ammonia', 'short', 'California', 35, 'ppm', read('calLimits', 'ammonia')),
  limit('ammonia', 'shift', 'EU', 20, 'ppm', recalled('Directive 2000/39/EC')),
  limit('ammonia', 'odour', 'OSHA', 5, 'ppm', read('nioshAmmonia', 'odour')),
  limit('nitrogen-dioxide', 'ceiling', 'OSHA', 5, 'ppm', read('nioshNo2', 'OSHA PEL')),
  limit('nitrogen-dioxide', 'short', 'NIOSH', 1, 'ppm', read('nioshNo2', 'NIOSH REL')),
  limit('nitrogen-dioxide', 'danger', 'NIOSH', 13, 'ppm', read('nioshNo2Idlh', 'IDLH')),
  limit('nitrogen-monoxide', 'shift', 'OSHA', 25, 'ppm', read('oshaLimits', 'nitric oxide')),
  limit('acetone', 'shift', 'OSHA', 1000, 'ppm', read('oshaLimits', 'acetone')),
  limit('acetone', 'shift', 'California', 500, 'ppm', read('calLimits', 'acetone')),
  limit('acetone', 'short', 'California', 750, 'ppm', read('calLimits', 'acetone')),
  limit('acetone', 'shift', 'EU', 500, 'ppm', recalled('Directive 2000/39/EC')),
  limit('ethyl-acetate', 'shift', 'EU', 200, 'ppm', recalled('Directive (EU) 2017/164')),
  limit('isopropanol', 'shift', 'OSHA', 400, 'ppm', read('oshaLimits', 'isopropyl alcohol')),
  limit('ethanol', 'shift', 'OSHA', 1000, 'ppm', read('oshaLimits', 'ethyl alcohol')),
  limit('sodium-hydroxide', 'ceiling', 'NIOSH', 2, 'mg/m3', recalled('NIOSH Pocket Guide')),
  limit(
    'copper-hydroxide',
    'shift',
    'OSHA',
    1,
    'mg/m3',
    read('oshaCopper', 'copper dusts and mists, as copper'),
  ),
  limit('silver-nitrate', 'shift', 'EU', 0.01, 'mg/m3', recalled('Directive 2006/15/EC, as silver')),
  limit(
    'nickel-sulfate',
    'shift',
    'EU',
    0.05,
    'mg/m3',
    recalled('Directive (EU) 2022/431, inhalable, as nickel'),
  ),
  limit(
    'chromium-six',
    'shift',
    'EU',
    0.005,
    'mg/m3',
    recalled('Directive 2004/37/EC, from 18 January 2025'),
  ),
];

/** The lowest limit known for a substance; null when none was found. */
export function strictest(substance: SubstanceId, kind: LimitKind): AirLimit | null {
  const known = airLimits.filter((one) => one.substance === substance && one.kind === kind);
  return known.reduce<AirLimit | null>(
    (low, one) => (low === null || one.value < low.value ? one : low),
    null,
  );
}
