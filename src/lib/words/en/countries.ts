/** Names that makers use for a country beside the one a dictionary has, without dots or accents, by its code. */
export const otherCountryNames: Readonly<Record<string, string>> = {
  america: 'US',
  britain: 'GB',
  'czech republic': 'CZ',
  england: 'GB',
  'great britain': 'GB',
  holland: 'NL',
  'northern ireland': 'NI',
  scotland: 'GB',
  turkey: 'TR',
  'united states of america': 'US',
  usa: 'US',
  wales: 'GB',
};
