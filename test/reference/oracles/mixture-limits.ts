/** Mass % from which a mixture carries a class, where the law names no other limit for the ingredient. */
export const mixtureLimits = {
  /** sum of what corrodes skin or damages eyes: serious damage, irritation */
  eyeDamage: 3,
  eyeIrritation: 1,
  skinCorrosion: 5,
  skinIrritation: 1,
  /** sum of what only irritates */
  irritants: 10,
  sensitiser: 1,
  carcinogen: 0.1,
  suspectedCarcinogen: 1,
  mutagen: 0.1,
  suspectedMutagen: 1,
  reproductive: 0.3,
  organs: 10,
  organsLess: 1,
  airways: 20,
  /** of the sum with M-factors */
  aquatic: 25,
} as const;

/** Acute toxicity estimates that stand for a category, mg/kg by mouth. */
export const oralEstimates = { H301: 100, H302: 500 } as const;
/** Up to which estimate of the mixture a statement holds, mg/kg by mouth. */
export const oralBounds = { H301: 300, H302: 2000 } as const;

/** Where these limits stand. */
export const mixtureBacking = {
  evidence: 'fromMemory',
  source: 'clpMixtures',
  locator: 'Tables 3.1.2, 3.2.3, 3.3.3, 3.4.5, 3.6.2, 3.7.2, 3.9.4 and 4.1.1 to 4.1.2, recalled',
} as const;
