/**
 * Second codes that people use for a country. ISO 3166-1 reserves them, so they cannot mean another country.
 * From memory of the standard's list of exceptionally reserved codes.
 */
const otherCodes: Readonly<Record<string, string>> = { UK: 'GB', EL: 'GR' };

/** The country code used in the tables of laws, for a code as typed. */
export function countryOf(typed: string): string {
  const code = typed.trim().toUpperCase();
  return otherCodes[code] ?? code;
}
