import type { JobInput } from '../core/plan/job-input.ts';

export type Paper = JobInput['paper'];

/** Regions that use US Letter, by the Unicode locale data; from memory. All others use A4. */
const letterRegions: readonly string[] = [
  'BZ',
  'CA',
  'CL',
  'CO',
  'CR',
  'GT',
  'MX',
  'NI',
  'PA',
  'PH',
  'PR',
  'SV',
  'US',
  'VE',
];

/** The paper of the first language that names a region. @param languages as the browser gives them */
export function paperOfRegion(languages: readonly string[]): Paper {
  const region = languages.map((tag) => /-([A-Z]{2})\b/.exec(tag)?.[1]).find((found) => found !== undefined);
  return region !== undefined && letterRegions.includes(region) ? 'Letter' : 'A4';
}
