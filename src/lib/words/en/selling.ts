import { isBitable, metals } from '../../core/facts/metals.ts';
import type { BitableMetal, RefusedMetal } from '../../core/facts/metals.ts';
import { defaultReadingUnits } from '../../core/job/reading-units.ts';
import { lead } from '../../core/facts/selling.ts';
import type { ReasonId } from '../../core/rules/term.ts';
import { reasons } from './reasons.ts';
import { fill } from './render.ts';
import { refusalTexts } from './rules.ts';
import { bitableStock } from './stock.ts';

type Stock = BitableMetal | RefusedMetal;

/** Metals that people ask about before they sell a piece. */
export const soldStock: readonly { readonly id: Stock; readonly label: string }[] = [
  ...bitableStock,
  { id: 'unknown-yellow', label: 'Yellow, not sure which' },
  { id: 'C36000', label: 'Leaded brass' },
  { id: 'C75200', label: 'Nickel silver, alpaca' },
  { id: 'coin-900', label: 'Coin silver' },
  { id: 'cadmium-solder', label: 'Old silver solder' },
];

/** Whether jewellery of a metal may be sold: a short answer, then what to do. */
export interface SaleAnswer {
  /** The stock whose lines of law apply to it. */
  readonly about: Stock;
  readonly verdict: 'good' | 'with care' | 'refuse';
  readonly head: string;
  readonly lines: readonly string[];
}

const reason = (id: ReasonId): string => fill(reasons[id], {}, defaultReadingUnits);

/** Lead, nickel and unknown metals decide the answer; any other metal is sold under its own name. */
export function saleAnswer(metal: Stock): SaleAnswer {
  if (!isBitable(metal))
    return {
      about: metal,
      verdict: 'refuse',
      head: metal === 'unknown-yellow' ? 'Not until you know what it is' : 'Do not sell it',
      lines:
        metal === 'unknown-yellow'
          ? [reason('way-unknownYellow')]
          : [reason('stock-cadmium'), reason('way-cadmium')],
    };
  const { family, composition } = metals[metal];
  const holds: Readonly<Partial<Record<string, number>>> = composition.massPercent;
  const share = holds['Pb'] ?? 0;
  if (share > lead.value) {
    const { text, instead } = refusalTexts['lead-for-sale'];
    const params = {
      metal,
      share: { value: share, unit: '%' },
      most: { value: lead.value, unit: '%' },
    } as const;
    return {
      about: metal,
      verdict: 'refuse',
      head: 'Not as jewellery',
      lines: [text, instead].map((line) => fill(line, params, defaultReadingUnits)),
    };
  }
  if (holds['Ni'] !== undefined)
    return {
      about: metal,
      verdict: 'with care',
      head: 'Only after a nickel test',
      lines: [reason('nickel-selling')],
    };
  const lines = [reason(family === 'silver' ? 'sale-silver' : 'sale-other')];
  return {
    about: family === 'brass' ? 'C36000' : metal,
    verdict: 'with care',
    head: 'Yes, under its own name',
    lines: family === 'brass' ? [...lines, traceOfLead] : lines,
  };
}

const traceOfLead =
  'Sheet brass may hold a trace of lead, and the trace can pass the limit: ask the seller for the figure. From memory, unchecked.';
