import type { Source } from './source.ts';

/** Laws and official guidance. Laws change, so each title gives the date of reading. */
export const lawSources = {
  poisonsActPart3: {
    title: 'UK Poisons Act 1972 Schedule 1A Part 3 with SI 2018/451 and SI 2023/63 (read November 2026)',
    how: 'read',
    address: 'https://www.legislation.gov.uk/uksi/2023/63/regulation/8',
  },
  denmarkPrecursors: {
    title: 'Danish order on explosives precursors, section 1 (read November 2026)',
    how: 'read',
    address: 'https://elov.dk/bekendtgorelse-om-udgangsstoffer-til-eksplosivstoffer/paragraf/1',
  },
  reachNickel: {
    title: 'REACH Annex XVII entry 27, nickel release (read as quoted, November 2026)',
    how: 'secondaryCopy',
  },
  reachLead: {
    title: 'REACH Annex XVII entry 63, lead in jewellery: 0.05 % by weight; recalled',
    how: 'memory',
  },
  reachCadmium: {
    title: 'REACH Annex XVII entry 23, cadmium in jewellery: 0.01 % by weight; recalled',
    how: 'memory',
  },
  hallmarkLaw: { title: 'UK Hallmarking Act 1973 and its exemption weights; recalled', how: 'memory' },
  teachingPractice: {
    title: 'Minors, expectant mothers, venue and insurer in classes: common practice',
    how: 'memory',
  },
  householdWasteEu: {
    title: 'Commission Notice 2020/C 375/01, separate collection of household hazardous waste',
    how: 'read',
  },
  cfr261: {
    title: '40 CFR 261.24, toxicity characteristic, text and Table 1',
    how: 'read',
    address: 'https://anthonygarvan.github.io/allregs/html/sections/40CFR261.24.html',
  },
  listOfWaste: {
    title: 'List of Waste, Decision 2000/532/EC: codes and texts (open data set)',
    how: 'secondaryCopy',
  },
} as const satisfies Record<string, Source>;
