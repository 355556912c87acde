import type { Source } from './source.ts';

/** Sources of classifications, limits and accident reports. */
export const safetySources = {
  sdsMagnesiumSulfate: {
    title: 'Safety data sheet, magnesium sulfate heptahydrate: not hazardous',
    how: 'read',
  },
  sdsSilverChloride: {
    title: 'Safety data sheet, silver chloride: H290, H400, H410, M-factors 1000 and 100',
    how: 'read',
  },
  niteGhs: { title: 'NITE Japan, GHS classification results', how: 'read' },
  oshaLimits: { title: 'List of OSHA permissible exposure limits', how: 'secondaryCopy' },
  calLimits: { title: 'California Table AC-1, permissible exposure limits', how: 'secondaryCopy' },
  oshaCopper: {
    title: 'Safety data sheet 1993, cupric nitrate: OSHA limit for copper dusts and mists',
    how: 'read',
  },
  nioshAmmonia: { title: 'NIOSH/OSHA guideline for ammonia: odour from 5 ppm', how: 'read' },
  nioshNo2: { title: 'NIOSH IDLH documentation, nitrogen dioxide', how: 'read' },
  nioshNo2Idlh: { title: 'NIOSH 2017 IDLH value for nitrogen dioxide', how: 'secondaryCopy' },
  serChlorine: { title: 'SER database of occupational limits: chlorine, by country', how: 'read' },
  argyria: {
    title: 'Mota & Dinis-Oliveira, J. Clin. Med. 10 (2021) 2086: argyria, a review',
    how: 'read',
    address: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC8152497',
  },
  bleachText: {
    title: 'State health department text: bleach with acid gives chlorine, with ammonia chloramines',
    how: 'secondaryCopy',
  },
  nitrateReduction: {
    title:
      'Bouzek et al., J. Appl. Electrochem. 31 (2001) 1185: copper is the most active cathode for nitrate, nitrite the intermediate; abstract',
    how: 'secondaryCopy',
  },
  dilutionAir: {
    title: 'University of Toledo course notes on dilution ventilation (the form of NIOSH and ACGIH)',
    how: 'read',
  },
  batteryVent: { title: 'Battery room ventilation, 0.017 L/s per ampere and cell', how: 'read' },
  homePoisoning: { title: 'National Poisons Centre (NZ), preventing poisoning in the home', how: 'read' },
  nickelAllergy: {
    title:
      'Nickel policy page quoting REACH Annex XVII entry 27: 0.5 and 0.2 µg/cm² a week; about 15 % of women react',
    how: 'secondaryCopy',
  },
} as const satisfies Record<string, Source>;
