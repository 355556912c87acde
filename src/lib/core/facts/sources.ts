import { lawSources } from './sources/law.ts';
import { safetySources } from './sources/safety.ts';
import type { Source } from './sources/source.ts';
import { tableSources } from './sources/tables.ts';

export type { Source } from './sources/source.ts';

/** Every source of a fact, by id. */
export const sources = {
  ...tableSources,
  ...safetySources,
  ...lawSources,
  codata2018: {
    title: 'CODATA recommended values of the fundamental constants, 2018 (exact since the 2019 SI)',
    how: 'secondaryCopy',
    address: 'doi:10.1103/RevModPhys.93.025010',
  },
  iupac2021: {
    title: 'IUPAC/CIAAW standard atomic weights 2021, abridged (Prohaska et al., Pure Appl. Chem. 94, 2022)',
    how: 'secondaryCopy',
    address: 'doi:10.1515/pac-2019-0603',
  },
  crcElementDensity: {
    title: 'CRC Handbook of Chemistry and Physics, 80th ed., densities of the elements',
    how: 'secondaryCopy',
  },
  espiSterling: { title: 'ESPI Metals, technical data sheet "Silver, sterling"', how: 'read' },
  brassMill: { title: 'Mill data sheet C26000 (ASTM B36) and copper-alloy mill guide', how: 'read' },
  kinoshita1970: {
    title:
      'Kinoshita, Landolt, Muller, Tobias: Stoichiometry of anodic copper dissolution at high current densities, J. Electrochem. Soc. 117 (1970); abstract',
    how: 'secondaryCopy',
  },
  astmG102: {
    title:
      'ASTM G102-89 (2010), calculation of corrosion rates and related information: equivalent weight of alloys',
    how: 'secondaryCopy',
  },
  crcConductivity: {
    title: 'CRC Handbook, "Electrical conductivity of aqueous solutions" (20 °C)',
    how: 'secondaryCopy',
  },
  crcConcentrative: {
    title: 'CRC Handbook, 102nd ed., "Concentrative properties of aqueous solutions" (20 °C)',
    how: 'secondaryCopy',
  },
  crcSolubility: {
    title: 'CRC Handbook, 98th ed., "Aqueous solubility of inorganic compounds at various temperatures"',
    how: 'secondaryCopy',
  },
  landoltSlopes: {
    title:
      'Landolt-Börnstein temperature coefficients of conductivity, reprinted in a conductivity-meter manual',
    how: 'secondaryCopy',
  },
  laliberte2009: {
    title:
      'Laliberté, J. Chem. Eng. Data 54 (2009) 1725: density, heat capacity and viscosity of aqueous electrolytes',
    how: 'secondaryCopy',
    address: 'doi:10.1021/je8008123',
  },
  newmanChannel: {
    title: 'Newman & Thomas-Alyea, Electrochemical Systems, 3rd ed., ch. 18: opposite strips in a channel',
    how: 'memory',
  },
  wagner1949: {
    title: 'Wagner 1949 and Wilke, Eisenberg, Tobias 1953: free convection at a vertical electrode',
    how: 'secondaryCopy',
  },
  cellOffsets: {
    title: 'Cell voltage offsets estimated from standard potentials and Tafel data gathered for this work',
    how: 'own',
  },
  budgetEstimate: {
    title:
      'Uncertainty budget of a first job: engineering estimate made for this work, not validated on etched pieces',
    how: 'own',
  },
  fieldSolver: {
    title: 'Field solver made for this work, held to closed forms and to independent solvers',
    how: 'own',
  },
  undercutSimulation: {
    title: 'Boundary-element runs of a masked slot made for this work, ±0.005',
    how: 'own',
  },
  allen1982: { title: 'Allen, Horne & Stevens 1982: definition of the etch factor', how: 'read' },
  niosh1: {
    title: 'NIOSH IDLH documentation, chlorine (REL, OSHA PEL, IDLH)',
    how: 'read',
    address: 'https://www.cdc.gov/niosh/idlh/7782505.html',
  },
  scoel76: { title: 'SCOEL/SUM/76, recommendation for chlorine, 1998', how: 'secondaryCopy' },
  hydrogenLimit: {
    title: 'Hydrogen lower explosive limit 4 % v/v in air (battery-room guidance)',
    how: 'read',
  },
  bathCooling: {
    title: 'Heat loss of a small open plastic tub: free convection and radiation, estimated for this work',
    how: 'own',
  },
  clpAnnexVI: {
    title: 'CLP Annex VI Table 3, Regulation (EC) 1272/2008, as of ATP17 (December 2021)',
    how: 'read',
  },
  sdsSodiumNitrate: { title: 'Supplier safety data sheet summary, sodium nitrate', how: 'read' },
  sdsPotassiumNitrate: { title: 'Supplier safety data sheet, potassium nitrate, 2016', how: 'read' },
  sdsSodiumSulfate: { title: 'Supplier safety data sheet, sodium sulfate: not classified', how: 'read' },
  regulation2019_1148: {
    title: 'Regulation (EU) 2019/1148 on explosives precursors, Annexes I and II',
    how: 'read',
  },
  cr6Transpassive: {
    title:
      'Mount, Howarth, Clifton, J. Electrochem. Soc. 150 (2003) D63; Schneider et al., J. Solid State Electrochem. 23 (2019) 345: chromate from steels',
    how: 'secondaryCopy',
    address: 'doi:10.1149/1.1545464',
  },
  silverChloride: {
    title: 'Growth of silver chloride on silver in sodium chloride solution (PMC3079928)',
    how: 'read',
    address: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC3079928',
  },
  fulminating: {
    title: 'Published accident reports on silver and ammonia (silver nitride)',
    how: 'secondaryCopy',
  },
  nitrateTinder: {
    title: 'J. Chem. Educ., Chemical Laboratory Information Profile: copper(II) nitrate, paper ignites',
    how: 'read',
  },
  sewerLimits: {
    title: '40 CFR 413 and 433, metal finishing; dilution instead of treatment is forbidden',
    how: 'read',
  },
  selv: { title: 'IEC Electropedia, safety extra-low voltage (IEC 61558-1)', how: 'read' },
  standardPotentials: {
    title: 'OpenStax Chemistry 2e, Appendix L, standard electrode potentials',
    how: 'read',
    address: 'https://openstax.org/books/chemistry-2e/pages/l-standard-electrode-half-cell-potentials',
  },
  webPoisonControl: {
    title: 'Poison Control (US), first aid for poisons',
    how: 'read',
    address: 'https://www.webpoisoncontrol.org/first-aid',
  },
  poisonCentreCall: {
    title: 'Missouri Poison Center, first aid and what to have ready',
    how: 'read',
    address: 'https://missouripoisoncenter.org/prevention/first-aid/',
  },
  cdcGetOff: {
    title: 'CDC, Get It Off: getting a chemical off and out',
    how: 'read',
    address: 'https://www.cdc.gov/chemicalemergencies/get-it-off.html',
  },
  burnsCentre: { title: 'Burns centre, first aid for chemical burns', how: 'read' },
  contactFirstAid: {
    title: 'Allegheny College, first aid for chemical contact',
    how: 'read',
    address: 'https://sites.allegheny.edu/safety-committee/policies-and-manuals/first-aid-chemical-contact/',
  },
  icsc0185: {
    title: 'ILO/WHO International Chemical Safety Card 0185, sodium nitrate',
    how: 'read',
    address: 'https://www.inchem.org/documents/icsc/icsc/eics0185.htm',
  },
  gloveGuide: {
    title: 'Cornell University, chemical hygiene plan, ch. 11: glove selection',
    how: 'secondaryCopy',
  },
  gloveTeaching: {
    title: 'Teaching slides on glove selection: butyl for ketones and esters, PVC and PVA limits',
    how: 'read',
  },
  gloveLayers: {
    title: 'Song, UCLA thesis: permeation through one, two and three layers of gloves',
    how: 'read',
    address: 'https://escholarship.org/uc/item/57d151wr',
  },
  en374: {
    title: 'EN ISO 374-1:2016, protective gloves: types, code letters, permeation levels',
    how: 'secondaryCopy',
  },
  en166: { title: 'EN 166, eye protection: frame symbols', how: 'secondaryCopy' },
  ansiZ87: { title: 'ANSI/ISEA Z87.1, eye protection: D3, D4 and D5 marks', how: 'secondaryCopy' },
  goggleVents: {
    title: 'Indiana Administrative Code 355 IAC 3-1.5-8: what counts as chemical splash goggles',
    how: 'read',
  },
  wearAdvice: {
    title: 'What to wear by task: recommendation made for this work from the classes of the substances',
    how: 'own',
  },
  tradePractice: { title: 'Common practice of the trade, no source', how: 'memory' },
  memory: { title: 'From memory, unchecked', how: 'memory' },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
