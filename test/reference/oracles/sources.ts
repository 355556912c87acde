import type { SourceId } from '../../../src/lib/core/facts/sources.ts';
import type { Source } from '../../../src/lib/core/facts/sources/source.ts';

/** Sources that only these tests draw on: no plan rests on them. */
export const oracleSources = {
  crcSolubilityProducts: {
    title: 'CRC Handbook, 91st ed., solubility product constants at 25 °C',
    how: 'secondaryCopy',
  },
  openstaxProducts: {
    title: 'OpenStax Chemistry 2e, Appendix J, solubility products',
    how: 'read',
    address: 'https://openstax.org/books/chemistry-2e/pages/j-solubility-products',
  },
  openstaxComplexes: {
    title: 'OpenStax Chemistry 2e, Appendix K, formation constants',
    how: 'read',
    address: 'https://openstax.org/books/chemistry-2e/pages/k-formation-constants-for-complex-ions',
  },
  phreeqcLlnl: { title: 'USGS PHREEQC database llnl.dat', how: 'read' },
  phreeqcThermoddem: { title: 'Thermoddem V1.10 for PHREEQC', how: 'read' },
  handbookProducts: {
    title: 'Waste management handbook, ch. 31, solubility product constants at 25 °C',
    how: 'read',
  },
  equilibriaOwn: { title: 'Constants worked out for this work from the others in the table', how: 'own' },
  clpMixtures: {
    title: 'CLP Annex I, generic concentration limits for mixtures; recalled',
    how: 'memory',
  },
} as const satisfies Record<string, Source>;

export type OracleSourceId = SourceId | keyof typeof oracleSources;
