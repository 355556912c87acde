import type { HazardCode } from './statements.ts';

export type Pictogram = 'GHS02' | 'GHS03' | 'GHS05' | 'GHS06' | 'GHS07' | 'GHS08' | 'GHS09';

/**
 * The pictogram that each statement calls for (CLP Annex I, label elements of each class; Annex V). Null:
 * none.
 */
const calledFor: Readonly<Record<HazardCode, Pictogram | null>> = {
  H220: 'GHS02',
  H221: null,
  H225: 'GHS02',
  H226: 'GHS02',
  H270: 'GHS03',
  H271: 'GHS03',
  H272: 'GHS03',
  H290: 'GHS05',
  H301: 'GHS06',
  H302: 'GHS07',
  H304: 'GHS08',
  H312: 'GHS07',
  H314: 'GHS05',
  H315: 'GHS07',
  H317: 'GHS07',
  H318: 'GHS05',
  H319: 'GHS07',
  H330: 'GHS06',
  H331: 'GHS06',
  H332: 'GHS07',
  H334: 'GHS08',
  H335: 'GHS07',
  H336: 'GHS07',
  H340: 'GHS08',
  H341: 'GHS08',
  H350: 'GHS08',
  H350i: 'GHS08',
  H351: 'GHS08',
  H360D: 'GHS08',
  H360Df: 'GHS08',
  H360FD: 'GHS08',
  H372: 'GHS08',
  H373: 'GHS08',
  H400: 'GHS09',
  H410: 'GHS09',
  H411: 'GHS09',
  H412: null,
};

const irritation: readonly HazardCode[] = ['H315', 'H319'];
const skinAndEyes: readonly HazardCode[] = [...irritation, 'H317'];

/**
 * Pictograms for a set of hazard statements, with the rules of precedence (CLP Article 26): the skull for
 * acute poison replaces the exclamation mark, corrosion of eyes or skin replaces the mark for irritating
 * them, and the sign for allergy of the airways replaces the mark for allergy and irritation of skin and
 * eyes.
 * @returns codes in ascending order
 */
export function pictogramsOf(hazards: Iterable<HazardCode>): Pictogram[] {
  const codes = [...hazards];
  const has = (...wanted: HazardCode[]): boolean => wanted.some((code) => codes.includes(code));
  const skull = has('H301', 'H330', 'H331');
  const dropped = new Set<HazardCode>([
    ...(has('H314', 'H318') ? irritation : []),
    ...(has('H334') ? skinAndEyes : []),
  ]);
  const shown = new Set(
    codes.flatMap((code) => {
      const sign = calledFor[code];
      if (sign === null || (sign === 'GHS07' && (skull || dropped.has(code)))) return [];
      return [sign];
    }),
  );
  return [...shown].sort();
}

/** The statements that call for a pictogram. */
export const statementsFor = (sign: Pictogram): HazardCode[] =>
  (Object.keys(calledFor) as HazardCode[]).filter((code) => calledFor[code] === sign);
