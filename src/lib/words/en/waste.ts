/** Where a bath may go, by use and country. Shown as of November 2026: laws differ and change. */
export const wasteTexts = {
  home: 'Work at home: take it to the household hazardous-waste collection, untreated, and ask before you come. An etching bath may not count as household waste: say what it holds.',
  selling:
    'Work for sale is a business: its waste is not household waste. Ask a licensed carrier or your authority before anything leaves the workshop.',
  teaching:
    'A class is not a household: the venue’s own waste service takes it. An adult answers for it, and every supply is started by an adult.',
  country:
    'Check your country’s rules: they change, and the collection’s word counts, not this page’s (November 2026).',
  strictest:
    'No country was given, so the strictest holds: hand over untreated, and nothing down any drain but unused table salt or baking soda.',
  store:
    'Upright, in a tray, locked away from children, pets, food and frost. Apart from acids, ammonia, bleach, solvents, and from the other metal group’s jar.',
  scale:
    'For scale, not a pouring limit: United States rule 40 CFR 261.24 calls liquid waste toxic from 5 mg/L silver. Copper has no line there, and does harm in water all the same.',
} as const;
