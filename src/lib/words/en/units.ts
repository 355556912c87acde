/** How a unit is written for a reader. */
const symbols: Readonly<Record<string, string>> = {
  um: 'μm',
  cm2: 'cm²',
  mm2: 'mm²',
  dm2: 'dm²',
  m2: 'm²',
  cm3: 'cm³',
  m3: 'm³',
  'm3/h': 'm³/h',
  'g/cm3': 'g/cm³',
  'A/dm2': 'A/dm²',
  'mA/cm2': 'mA/cm²',
  degC: '°C',
  degF: '°F',
  ohm: 'Ω',
  'A.h': 'A·h',
  'mA.h': 'mA·h',
  'A.h/L': 'A·h/L',
  'W/m2K': 'W/(m²·K)',
  'J/kgK': 'J/(kg·K)',
  'm2/s': 'm²/s',
  'mol/m3': 'mol/m³',
  'm3/mol': 'm³/mol',
  '1': '',
};

export const unitSymbol = (unit: string): string => symbols[unit] ?? unit;

/** No-break space between number and unit; none before °, %, or nothing. */
export const withUnit = (number: string, unit: string): string => {
  const symbol = unitSymbol(unit);
  return symbol === '' ? number : `${number}\u00a0${symbol}`;
};
