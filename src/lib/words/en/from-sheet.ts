import type { StepId } from '../../core/rules/rule.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import { hasKnobs } from '../../core/facts/supplies.ts';
import { jobFields } from '../../core/job/fields.ts';
import type { JobInput } from '../../core/plan/job-input.ts';
import { sentenceCase, termText } from './render.ts';
import { amountText, areaText, lengthText, temperatureText } from './units.ts';

export const fromSheetTexts = {
  title: 'Start from this sheet',
  start: 'Start from this',
  open: 'Open that job',
  here: (title: string): string => `It is in this notebook as “${title}”.`,
  carried: 'The sheet carried these answers. You fill in title, place and room.',
  held: 'The bath on the sheet held metal already. The job starts with it: choose yours from the shelf instead, or mix a new one.',
  checks: 'The new job starts at its metal. No check comes with it: look at everything yourself.',
} as const;

/** Why a code or a text cannot be used, and what to do. */
export const sheetFaults = {
  mistyped: 'That is not a code from a sheet: a letter is wrong or missing. Check it again.',
  'not-here':
    'That job is not in this notebook. The QR code on its sheet carries the answers: scan it, or paste what it says. Its notebook file carries the whole job.',
  foreign: 'This is not an Etchwright job. Nothing was started.',
  newer: 'This comes from a later version. Load the new version here, then try again.',
  damaged: 'This was damaged on the way: letters are missing or wrong. Scan or copy it again.',
  'no-job': 'No job can be planned from this. Nothing was started.',
} as const;

const supplyLines = {
  none: 'supply not chosen yet',
  shown: (supply: string, does: readonly string[]): string => [supply, ...does].join(', '),
  most: (amps: string): string => `${amps} at most`,
} as const;

/** The volts of a new job, before the maker has entered any. */
const usualVolts = Number(jobFields['supply.volts'].blank);

function supplyLine(supply: JobInput['supply']): string {
  const limit = supply.control === 'volts' ? supply.maxAmps : supply.amps;
  const volts = supply.control === 'volts' ? supply.volts : supply.maxVolts;
  // A supply with knobs is set to what the plan proposes, so the value of a new job is not an answer of the
  // maker's.
  const isLeft = hasKnobs(supply.kind) && volts === usualVolts;
  return supplyLines.shown(termText(`supply-${supply.kind}`), [
    ...(isLeft ? [] : [amountText(volts, 'V')]),
    ...(limit === null ? [] : [supplyLines.most(amountText(limit, 'A'))]),
  ]);
}

export type AnswerLineId = 'piece' | 'depth' | 'plate' | 'bath' | 'resist' | 'supply';

/** The step that asks for each line. The supply is asked for with the workshop, before the metal. */
export const stepOfLine: Readonly<Record<AnswerLineId, StepId>> = {
  piece: 'metal',
  depth: 'metal',
  plate: 'electrodes',
  bath: 'electrolyte',
  resist: 'resist',
  supply: 'metal',
};

/**
 * What a job is made with, one line for each step that asks for it.
 * @param unchosen fields that nobody has chosen
 */
export function answerLines(
  job: JobInput,
  unchosen: readonly string[] = [],
): readonly { readonly id: AnswerLineId; readonly step: StepId; readonly text: string }[] {
  const { piece, cathode, bath, resist, supply } = job;
  const units = readingUnitsOf(job);
  const length = (metres: number): string => lengthText(metres, units);
  // A disc is planned as the square of equal area; this converts it back to its diameter.
  const size =
    piece.shape === 'disc'
      ? `disc ${length(Number((piece.width * Math.sqrt(4 / Math.PI)).toPrecision(6)))}`
      : `${length(piece.width)} × ${length(piece.height)}`;
  const lines: readonly (readonly [AnswerLineId, string])[] = [
    [
      'piece',
      `${piece.count > 1 ? `${piece.count} × ` : ''}${termText(piece.metal)}, ${size}, ${length(piece.thickness)} thick`,
    ],
    [
      'depth',
      `${length(piece.depth)} deep${piece.openArea === null ? '' : `, ${areaText(piece.openArea, units)} bare`}`,
    ],
    [
      'plate',
      `plate of ${termText(cathode.metal)}, ${length(cathode.width)} × ${length(cathode.height)}, ${length(cathode.gap)} away`,
    ],
    [
      'bath',
      `${bath.record === null ? '' : `${bath.record}: `}${termText(bath.salt)}, ${amountText(bath.strength, 'g/L')} of water, ${temperatureText(bath.temperature, units)}`,
    ],
    ['resist', resist.replaceAll('-', ' ')],
    ['supply', unchosen.includes('supply.kind') ? supplyLines.none : supplyLine(supply)],
  ];
  return lines.map(([id, text]) => ({ id, step: stepOfLine[id], text: sentenceCase(text) }));
}

/** The settings in short lines, to compare with the printed sheet. */
export const settingsLines = (job: JobInput, unchosen: readonly string[] = []): readonly string[] =>
  answerLines(job, unchosen).map(({ text }) => text);
