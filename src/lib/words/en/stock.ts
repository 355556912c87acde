import type { BitableMetal, RefusedMetal } from '../../core/facts/metals.ts';

type Stock = BitableMetal | RefusedMetal;

/** Sheet metal that can be etched here: its stamp and names. */
export const bitableStock = [
  { id: 'sterling-925', stamp: '925', label: 'Sterling silver', hint: 'silver with copper' },
  { id: 'fine-silver-999', stamp: '999', label: 'Fine silver', hint: 'pure silver' },
  { id: 'C11000', stamp: 'Cu', label: 'Copper', hint: 'red sheet, C110, C101' },
  { id: 'C26000', stamp: '70/30', label: 'Brass 70/30', hint: 'C260, CZ106, CuZn30' },
] as const satisfies readonly {
  readonly id: BitableMetal;
  readonly stamp: string;
  readonly label: string;
  readonly hint: string;
}[];

/**
 * Other stock that makers may own, listed so that each gets an answer by name. `follows` says in a clause
 * what results; common knowledge of the trade.
 */
export const otherStock = [
  {
    id: 'unknown',
    label: 'I do not know',
    why: 'An unknown metal cannot be planned, and may give off poison.',
  },
  {
    id: 'C27200',
    label: 'Other brass, 63/37 or 65/35',
    why: 'More zinc: it turns pink sooner in table salt.',
  },
  {
    id: 'C22000',
    label: 'Gilding metal, bronze 90/10',
    why: 'It bites like copper, a little slower than brass.',
  },
  {
    id: 'C51000',
    label: 'Bronze with tin',
    why: 'Tin stays behind as a grey skin in nitrate; table salt takes it off.',
  },
  {
    id: 'C75200',
    label: 'Nickel silver, alpaca',
    why: 'It holds nickel, not silver, and many people’s skin reacts to it. Table salt only.',
  },
  {
    id: 'silver-935-lowtarnish',
    label: 'Low-tarnish silver',
    why: 'It bites like sterling; what is in it besides silver is its maker’s secret.',
  },
  {
    id: 'coin-900',
    label: 'Coin silver, 800 or 900',
    why: 'It bites like sterling; old coin varies from piece to piece.',
  },
  {
    id: 'C36000',
    label: 'Leaded brass, rod or cast',
    why: 'Lead goes into the bath and its waste. Not for sale as jewellery.',
  },
  { id: 'gold', label: 'Gold', why: 'These salts do not etch it, and losing any is costly.' },
  {
    id: 'gold-filled',
    label: 'Gold-filled, rolled gold',
    why: 'The skin is thin; under it is another metal.',
  },
  {
    id: 'plated',
    label: 'Plated: silver, gold, chrome',
    why: 'The bite goes through the skin into an unknown metal.',
  },
  { id: 'stainless', label: 'Stainless steel', why: 'It shines like silver and takes no tarnish.' },
  { id: 'mild-steel', label: 'Iron or steel', why: 'A magnet sticks to it. Table salt only; it rusts.' },
  { id: 'galvanised', label: 'Zinc, galvanised', why: 'Zinc fizzes off before the design is bitten.' },
  { id: 'Al-1100', label: 'Aluminium', why: 'Light grey, a third of the weight of brass.' },
  { id: 'titanium', label: 'Titanium', why: 'Its own oxide stops the current.' },
] as const satisfies readonly { readonly id: Stock; readonly label: string; readonly why: string }[];

type Other = (typeof otherStock)[number];
/** Metals that only a test can tell apart. */
type Unsure = 'unknown-yellow' | 'unknown-white';

/**
 * Metals too similar to be listed one by one, each with the stock it is shown as, so that one list holds
 * every metal.
 */
const shownAs: Readonly<
  Record<Exclude<Stock, Other['id'] | (typeof bitableStock)[number]['id'] | Unsure>, Other['id']>
> = {
  C23000: 'C22000',
  C27000: 'C27200',
  C28000: 'C27200',
  '304': 'stainless',
  '316': 'stainless',
  nichrome: 'stainless',
  'chrome-plated': 'plated',
  'silver-plated': 'plated',
  'cadmium-solder': 'unknown',
  pewter: 'unknown',
  niobium: 'titanium',
  'Al-6061': 'Al-1100',
};

/** The entry shown for a metal in the list of other stock; undefined for a metal that is not in it. */
export function otherStockOf(metal: string): Other | undefined {
  const id = Object.hasOwn(shownAs, metal) ? shownAs[metal as keyof typeof shownAs] : metal;
  return otherStock.find((stock) => stock.id === id);
}

interface StockTest {
  readonly title: string;
  readonly text: string;
}

/** How to find out what a metal is. Common practice, no source. */
export const stockTests: Readonly<Record<Unsure, readonly StockTest[]>> = {
  'unknown-yellow': [
    {
      title: 'Hold a magnet to it.',
      text: 'It sticks: plated steel. Do not etch it.',
    },
    {
      title: 'Scratch the back, deep, where it will not show.',
      text: 'White or grey below: plated. Do not etch it. Red below: plated copper. Yellow all through: some brass.',
    },
    {
      title: 'Look for its name.',
      text: 'On the bill, the sheet’s edge or the seller’s page: C260, CZ106, CuZn30 or “cartridge” is brass 70/30. Choose that above. No name: treat it as leaded brass, and do not sell it; brass for turning holds lead.',
    },
  ],
  'unknown-white': [
    {
      title: 'Look for a stamp.',
      text: 'A fineness, as on the tiles above, is silver: choose that. EPNS or “alpaca” is no silver.',
    },
    {
      title: 'Hold a magnet to it.',
      text: 'It sticks: steel or nickel. Do not etch it as silver.',
    },
    {
      title: 'Lift it.',
      text: 'As light as a plastic lid: aluminium. Do not etch it here.',
    },
    {
      title: 'Scratch the back, deep, where it will not show.',
      text: 'Yellow or red below: plated. White all through may still be stainless steel, which makes the bath poisonous. No stamp: have a jeweller or an assay office test it first.',
    },
  ],
};

/** Whether a metal must first be identified by tests. */
export const isUnsure = (metal: string): metal is Unsure => Object.hasOwn(stockTests, metal);
