import type { Datum } from './datum.ts';

/** Lead in any part of a piece of jewellery, mass %. What is sold in the European Union must stay below. */
export const lead = {
  value: 0.05,
  unit: '%',
  uncertainty: { kind: 'exact' },
  validFor: {},
  evidence: 'fromMemory',
  source: 'reachLead',
  locator: 'paragraph 1',
} as const satisfies Datum;

/** Cadmium in metal jewellery, mass %. */
export const cadmium = {
  value: 0.01,
  unit: '%',
  uncertainty: { kind: 'exact' },
  validFor: {},
  evidence: 'fromMemory',
  source: 'reachCadmium',
  locator: 'paragraph 10',
} as const satisfies Datum;

const release = (value: number, locator: string) =>
  ({
    value,
    unit: 'ug/cm2/week',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'regulatory',
    source: 'reachNickel',
    locator,
  }) as const satisfies Datum;

/** Nickel that a piece may release. */
export const nickelRelease = {
  skin: release(0.5, 'articles in long contact with skin'),
  post: release(0.2, 'posts in pierced ears and other pierced parts'),
} as const;

const exempt = (value: number, locator: string) =>
  ({
    value,
    unit: 'g',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'fromMemory',
    source: 'hallmarkLaw',
    locator,
  }) as const satisfies Datum;

/** United Kingdom: from this weight up, a piece needs a hallmark before it may be called by its metal. */
export const hallmarkFrom = {
  gold: exempt(1, 'gold'),
  silver: exempt(7.78, 'silver'),
  platinum: exempt(0.5, 'platinum'),
  palladium: exempt(1, 'palladium'),
} as const;
