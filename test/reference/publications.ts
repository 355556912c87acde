/** A publication that results are compared with. */
export interface Publication {
  readonly title: string;
  /** `read` at the source or a copy, `recalled` and matched by arithmetic, `own` for our independent sums */
  readonly how: 'read' | 'recalled' | 'own';
}

/** Where the numbers in these tests come from. `own` ones do not count as outside sources. */
export const published = {
  openstax: { title: 'OpenStax Chemistry 2e §17.7', how: 'read' },
  masterton: { title: 'Masterton & Hurley, Chemistry: Principles and Reactions, ch. 17', how: 'read' },
  chang: { title: 'Chang, General Chemistry: The Essential Concepts, ch. 19', how: 'read' },
  serway: { title: 'Serway, Physics for Scientists and Engineers, ch. 27', how: 'recalled' },
  platingProblems: { title: 'Russian plating problem set', how: 'read' },
  verma: { title: 'Verma, Concepts of Physics, ch. 34', how: 'recalled' },
  silverSpoon: { title: 'General-chemistry exercise, silver on a copper spoon', how: 'read' },
  entranceExam: { title: 'Indian entrance-exam classic, silver layer', how: 'recalled' },
  misumi: { title: 'MISUMI surface-finishing tutorial no. 166', how: 'read' },
  equivalentsTable: { title: 'Metal finishers’ table of electrochemical equivalents', how: 'read' },
  corrosionUnits: { title: 'Corrosion-units table (Roberge type)', how: 'read' },
  corrosionQuiz: { title: 'Corrosion multiple-choice set, 0.129·a·i/(n·D)', how: 'read' },
  kfupm: { title: 'KFUPM Corrosion Engineering ex. 3.3', how: 'read' },
  astmG1: { title: 'ASTM G1/G31 coupon formula', how: 'read' },
  astmG102: { title: 'ASTM G102-89 Table 1', how: 'recalled' },
  jones: { title: 'Jones, Principles and Prevention of Corrosion', how: 'recalled' },
  nbsSilver: { title: 'NBS: Craig et al. 1960, Bower & Davis 1980', how: 'read' },
  kinoshita: { title: 'Kinoshita, Landolt, Muller, Tobias 1970', how: 'read' },
  chemicalElements: { title: 'npm chemical-elements 2.3.3 and mf-parser 3.9.3', how: 'read' },
  laliberte: { title: 'Laliberté, J. Chem. Eng. Data 54 (2009) 1725', how: 'read' },
  crcDensity: { title: 'CRC Handbook 102nd ed., concentrative properties', how: 'read' },
  crcConductivity: { title: 'CRC Handbook, conductivity of aqueous solutions', how: 'read' },
  crcEquivalent: { title: 'CRC Handbook, equivalent conductivity at 25 °C', how: 'read' },
  crcSolubility: { title: 'CRC Handbook 98th ed., aqueous solubility', how: 'read' },
  crcSolubility91: { title: 'CRC Handbook 91st ed., aqueous solubility', how: 'read' },
  wikipediaSolubility: { title: 'Wikipedia solubility table', how: 'read' },
  landolt: { title: 'Landolt-Börnstein conductivity slopes', how: 'read' },
  en62485: { title: 'EN 50272 / IEC 62485, battery rooms', how: 'read' },
  abulencia: {
    title: 'Abulencia & Theodore, Fluid Flow for the Practicing Chemical Engineer, ex. 20.2',
    how: 'read',
  },
  ieee484: { title: 'IEEE 484, vented batteries', how: 'read' },
  scoel: { title: 'SCOEL/SUM/76, chlorine', how: 'read' },
  newman: { title: 'Newman & Thomas-Alyea ch. 18, strips in a channel', how: 'recalled' },
  wagner: { title: 'Wagner 1949, free convection at a vertical plate', how: 'recalled' },
  astmB258: { title: 'ASTM B258, American wire gauge', how: 'recalled' },
  yard1959: { title: 'International yard and pound agreement 1959', how: 'recalled' },
  nistSp811: { title: 'NIST SP 811, Guide for the Use of the SI, App. B', how: 'recalled' },
  codata: { title: 'CODATA 2018', how: 'read' },
  clpAnnexVI: { title: 'CLP Annex VI Table 3, ATP17 (December 2021)', how: 'read' },
  kclStandards: {
    title: 'KCl standards by molality, Pure Appl. Chem. 73 (2001) 1783, as in the CRC Handbook',
    how: 'read',
  },
  demal: { title: 'OIML R 56 demal KCl standards, as printed in a meter manual', how: 'read' },
  openstaxPotentials: { title: 'OpenStax Chemistry 2e, Appendix L', how: 'read' },
  openstaxProducts: { title: 'OpenStax Chemistry 2e, Appendix J', how: 'read' },
  phreeqc: { title: 'USGS PHREEQC databases: minteq.v4, wateq4f, llnl, Thermoddem', how: 'read' },
  anchors: { title: 'Etch-depth anchors, independent arithmetic', how: 'own' },
  undercutRuns: { title: 'Boundary-element runs of a masked slot', how: 'own' },
  heatTable: { title: 'Bath heating table, independent arithmetic', how: 'own' },
  wasteTable: { title: 'Treatment table, independent arithmetic', how: 'own' },
  closedForms: {
    title:
      'Primary current distribution: closed forms in 30 digits and graded finite volumes, worked out apart',
    how: 'own',
  },
  learningChecks: { title: 'Learning, worked by hand in 40 digits and on a finer grid', how: 'own' },
  nistStrd: { title: 'NIST Statistical Reference Datasets', how: 'recalled' },
  bda3: { title: 'Gelman et al., Bayesian Data Analysis, 3rd ed.', how: 'recalled' },
  gasTable: { title: 'Gas table, independent arithmetic', how: 'own' },
  fieldCases: { title: 'Three-dimensional field cases, independent solvers', how: 'own' },
} as const satisfies Record<string, Publication>;

export type PublicationId = keyof typeof published;
