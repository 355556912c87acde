import type { Source } from './source.ts';

/** Sources of tables and constants. */
export const tableSources = {
  kclStandards: {
    title:
      'Potassium chloride conductivity standards by molality (Wu, Koch, Pratt 1991; IUPAC, Pure Appl. Chem. 73, 2001, 1783), as the CRC Handbook prints them',
    how: 'secondaryCopy',
    address: 'doi:10.1351/pac200173111783',
  },
  wikipediaSolubility: { title: 'Wikipedia, "Solubility table"', how: 'secondaryCopy' },
  citricSolubility: {
    title:
      'Citric acid: 54.0, 59.2 and 64.3 mass % at 10, 20 and 30 °C, quoted from a chemical database in an engineering forum',
    how: 'secondaryCopy',
  },
  lowTarnishSilver: {
    title: 'US patent application 10/559,092: silver with copper and germanium',
    how: 'read',
  },
  bronzeMill: { title: 'Mill and casting data pages for C51000 (ASTM B139)', how: 'read' },
  wroughtBrasses: { title: 'Table of wrought brasses with UNS composition limits', how: 'read' },
  leadedBrass: { title: 'Composition page of C36000 free-cutting brass', how: 'read' },
  densityTables: {
    title: 'Open compilation of alloy densities; only rows that repeat over tempers',
    how: 'secondaryCopy',
  },
  nickelSilverSheet: { title: 'Civil engineering handbook page: 65 copper, 18 nickel, 17 zinc', how: 'read' },
  steelSheets: { title: 'Data pages of plain carbon, 304 and 316 steels', how: 'read' },
  aluminiumLimits: { title: 'Aluminum Association composition limits, 1100 and 6061', how: 'read' },
  phreeqcMinteq: { title: 'USGS PHREEQC database minteq.v4.dat', how: 'read' },
  phreeqcWateq: { title: 'USGS PHREEQC database wateq4f.dat', how: 'read' },
  phreeqcThermochimie: { title: 'ThermoChimie v10a for PHREEQC', how: 'read' },
  wikipediaPotentials: {
    title: 'Wikipedia, "Standard electrode potential (data page)"',
    how: 'secondaryCopy',
  },
  nickelPassive: {
    title: 'Datta & Landolt, J. Electrochem. Soc. 122 (1975) 1466: nickel in nitrate; abstract',
    how: 'secondaryCopy',
  },
  steelNitrate: {
    title:
      'Anodic film studies on steel in nitrate-based electrolytes, J. Electrochem. Soc. 119 (1972) 419; abstract',
    how: 'secondaryCopy',
    address: 'doi:10.1149/1.2404221',
  },
} as const satisfies Record<string, Source>;
