/**
 * Codes that are in use for a country beside its own: reserved by ISO 3166-1, so that they can name no other.
 * From memory of the standard's list of exceptionally reserved codes.
 */
const otherCodes: Readonly<Record<string, string>> = { UK: 'GB', EL: 'GR' };

/** The code that laws are kept by, of a code as typed. */
export function countryOf(typed: string): string {
  const code = typed.trim().toUpperCase();
  return otherCodes[code] ?? code;
}
