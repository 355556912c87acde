import type { Content } from 'pdfmake/interfaces';
import type { Plan } from '../../core/plan/plan.ts';
import type { Params } from '../../core/rules/rule.ts';
import { fromSi } from '../../core/units/convert.ts';
import type { UnitSymbol } from '../../core/units/convert.ts';
import type { Dimension, Quantity } from '../../core/units/quantity.ts';
import { jobTexts } from '$words/papers.ts';
import { fill } from '$words/render.ts';
import { terms } from '$words/terms.ts';
import { ink } from '../paper.ts';
import { typeset } from '../typeset.ts';

/** A typed SI amount in the unit that a bench uses. */
const as = (value: Quantity<Dimension>, unit: UnitSymbol) => ({ value: fromSi(value, unit), unit });

/** A text of the job with its blanks filled, left in lower case as part of a list. */
function phrase(template: string, params: Params): string {
  const text = fill(`x${template}`, params);
  return text.slice(1);
}

const named = (id: string): string => terms[id] ?? id;

function pieceLines({ job: { piece } }: Plan): string[] {
  const size = { width: as(piece.width, 'mm'), height: as(piece.height, 'mm') };
  return [
    ...(piece.count > 1 ? [phrase(jobTexts.count, { count: String(piece.count) })] : []),
    phrase(jobTexts[piece.shape], size),
    phrase(jobTexts.sheetMetal, { thickness: as(piece.thickness, 'mm') }),
    `${jobTexts[piece.faces]}, ${phrase(jobTexts.wanted, { depth: as(piece.depth, 'mm') })}`,
    ...(piece.openArea === null
      ? []
      : [phrase(jobTexts.bareArea, { area: as(piece.openArea, 'cm2') }) + (piece.count > 1 ? ' each' : '')]),
  ];
}

/** What the maker's supply is, as typed. */
export function supplyText({ job: { supply } }: Plan): string {
  if (supply.control === 'amps') {
    return phrase(jobTexts.bySupplyAmps, { amps: as(supply.amps, 'A'), volts: as(supply.maxVolts, 'V') });
  }
  const volts = as(supply.volts, 'V');
  return supply.maxAmps === null
    ? phrase(jobTexts.bySupplyVolts, { volts })
    : phrase(jobTexts.bySupplyVoltsLimit, { volts, amps: as(supply.maxAmps, 'A') });
}

/** What the job is, as it was typed: four short columns under the title. */
export function jobStrip(plan: Plan): Content {
  const { cathode, bath, resist, supply, piece } = plan.job;
  const columns: readonly [string, string, readonly string[]][] = [
    [jobTexts.piece, named(piece.metal), pieceLines(plan)],
    [
      jobTexts.plate,
      named(cathode.metal),
      [
        phrase(jobTexts.rectangle, { width: as(cathode.width, 'mm'), height: as(cathode.height, 'mm') }),
        phrase(jobTexts.gap, { gap: as(cathode.gap, 'mm') }),
      ],
    ],
    [
      jobTexts.bath,
      bath.record === null ? named(bath.salt) : phrase(jobTexts.record, { record: bath.record }),
      [
        phrase(jobTexts.strength, { strength: as(bath.strength, 'g/L') }),
        `${named(`water-${bath.water}`)}, ${phrase('{t}', { t: as(bath.temperature, 'degC') })}`,
      ],
    ],
    [jobTexts.supply, resist.replaceAll('-', ' '), [named(supply.kind), supplyText(plan)]],
  ];
  return {
    columnGap: 12,
    margin: [0, 6, 0, 10],
    columns: columns.map(([head, name, lines]) => ({
      width: '*',
      fontSize: 9.5,
      lineHeight: 0.97,
      stack: [
        { text: head, fontSize: 8.5, color: ink.accent, bold: true },
        { text: typeset(name), bold: true },
        ...lines.map((text) => ({ text: typeset(text) })),
      ],
    })),
  };
}
