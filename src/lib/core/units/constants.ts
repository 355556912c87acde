/** Physical constants, SI. CODATA values are exact since 2019. */

/** Faraday constant, C/mol. CODATA 2018, exact: e·N_A. */
export const FARADAY = 96485.33212;
/** Molar gas constant, J/(mol·K). CODATA 2018, exact. */
export const GAS_CONSTANT = 8.314462618;
/** Standard atmosphere, Pa. */
export const ATMOSPHERE = 101325;
/** Zero of the Celsius scale, K. */
export const CELSIUS_ZERO = 273.15;
/** One ampere-hour, C. */
export const AMPERE_HOUR = 3600;
