import type { Content } from 'pdfmake/interfaces';
import type { JobInput } from '../../core/plan/job-input.ts';
import type { Plan } from '../../core/plan/plan.ts';
import type { Params } from '../../core/rules/rule.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import { fromSi } from '../../core/units/convert.ts';
import type { UnitSymbol } from '../../core/units/convert.ts';
import type { Dimension, Quantity } from '../../core/units/quantity.ts';
import { jobTexts } from '$words/papers.ts';
import { phrase, termText } from '$words/render.ts';
import { temperatureText } from '$words/units.ts';
import { ink } from '../paper.ts';
import { typeset } from '../typeset.ts';

/** An SI amount in the unit that makers use. */
const as = (value: Quantity<Dimension>, unit: UnitSymbol) => ({ value: fromSi(value, unit), unit });

function pieceLines({ piece, ...job }: JobInput): string[] {
  const said = (template: string, params: Params): string => phrase(template, params, readingUnitsOf(job));
  const size = { width: as(piece.width, 'mm'), height: as(piece.height, 'mm') };
  return [
    ...(piece.count > 1 ? [said(jobTexts.count, { count: { text: String(piece.count) } })] : []),
    said(jobTexts[piece.shape], size),
    said(jobTexts.sheetMetal, { thickness: as(piece.thickness, 'mm') }),
    `${jobTexts[piece.faces]}, ${said(jobTexts.wanted, { depth: as(piece.depth, 'mm') })}`,
    ...(piece.openArea === null
      ? []
      : [said(jobTexts.bareArea, { area: as(piece.openArea, 'cm2') }) + (piece.count > 1 ? ' each' : '')]),
  ];
}

/** The maker's supply in words, as typed. */
export function supplyText({ supply, ...job }: JobInput): string {
  const said = (template: string, params: Params): string => phrase(template, params, readingUnitsOf(job));
  if (supply.control === 'amps') {
    return said(jobTexts.bySupplyAmps, { amps: as(supply.amps, 'A'), volts: as(supply.maxVolts, 'V') });
  }
  const volts = as(supply.volts, 'V');
  return supply.maxAmps === null
    ? said(jobTexts.bySupplyVolts, { volts })
    : said(jobTexts.bySupplyVoltsLimit, { volts, amps: as(supply.maxAmps, 'A') });
}

/** The job as it was typed, in four short columns below the title. */
export function jobStrip({ job }: Plan): Content {
  const { cathode, bath, resist, supply, piece } = job;
  const said = (template: string, params: Params): string => phrase(template, params, readingUnitsOf(job));
  const columns: readonly [string, string, readonly string[]][] = [
    [jobTexts.piece, termText(piece.metal), pieceLines(job)],
    [
      jobTexts.plate,
      termText(cathode.metal),
      [
        said(jobTexts.rectangle, { width: as(cathode.width, 'mm'), height: as(cathode.height, 'mm') }),
        said(jobTexts.gap, { gap: as(cathode.gap, 'mm') }),
      ],
    ],
    [
      jobTexts.bath,
      bath.record === null ? termText(bath.salt) : said(jobTexts.record, { record: { text: bath.record } }),
      [
        said(jobTexts.strength, { strength: as(bath.strength, 'g/L') }),
        `${termText(`water-${bath.water}`)}, ${temperatureText(bath.temperature, readingUnitsOf(job))}`,
      ],
    ],
    [jobTexts.supply, resist.replaceAll('-', ' '), [termText(`supply-${supply.kind}`), supplyText(job)]],
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
