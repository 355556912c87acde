/** Names that makers use for a country in addition to the usual one, without dots or accents. */
export const otherCountryNames = {
  CZ: ['czech republic'],
  GB: ['britain', 'england', 'great britain', 'scotland', 'wales'],
  NI: ['northern ireland'],
  NL: ['holland'],
  TR: ['turkey'],
  US: ['america', 'united states of america', 'usa'],
} as const satisfies Readonly<Record<'CZ' | 'GB' | 'NI' | 'NL' | 'TR' | 'US', readonly string[]>>;
