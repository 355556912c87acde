import type { Column, Content, ContentSection, TableCell } from 'pdfmake/interfaces';
import type { ClassPack } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import { fromSi } from '../core/units/convert.ts';
import { classTexts, depthText, pieceCount } from '$words/class.ts';
import { cardTexts } from '$words/papers.ts';
import { fill } from '$words/render.ts';
import { symbolRead, unitSymbol } from '$words/units.ts';
import { familyOf } from './bath-hazards.ts';
import { box, cardHolds, writeIn, writeIns } from './bench-card.ts';
import { bare, checkBox, ruled } from './drawing/plate-mark.ts';
import { ink, mm, tabular } from './paper.ts';
import { typeset } from './typeset.ts';

/** A box for one person's initials, mm: large enough for a pencil in a wet hand. */
const INITIALS = { width: 30, height: 12 } as const;

const initialsBox = (label: string): Column => ({
  width: mm(INITIALS.width) + 8,
  stack: [
    { text: label, fontSize: 9.5, color: ink.soft, lineHeight: 1 },
    {
      canvas: [
        {
          type: 'rect',
          x: 0.6,
          y: 1,
          w: mm(INITIALS.width),
          h: mm(INITIALS.height),
          r: 2,
          lineWidth: 1,
          lineColor: ink.black,
        },
      ],
    },
  ],
});

const look = (text: string): Content => ({
  columns: [
    { width: mm(box.tick) + 8, stack: [checkBox(box.tick, 1.2)] },
    { width: '*', text, fontSize: 14, lineHeight: 1, margin: [0, 8, 0, 0] },
  ],
  margin: [0, 0, 0, 3],
});

const hold = ([title, checks]: readonly [string, readonly string[]]): Content => ({
  unbreakable: true,
  margin: [0, 0, 0, 8],
  stack: [
    { text: title, bold: true, fontSize: 13, color: ink.accent, lineHeight: 1, margin: [0, 0, 0, 3] },
    ...checks.map(look),
    { columns: [initialsBox(classTexts.adult), initialsBox(classTexts.other)], margin: [0, 1, 0, 0] },
  ],
});

/** Rows to write readings in: one at the start, at every look and at the stop. */
const READINGS = 4;
/** Pieces in a row. */
const ACROSS = 4;
/** More pieces than these have a page of their own: with the longest names, in two lines, no more fit on US Letter. */
const MOST_ON_CARD = 12;

/** A box to write readings in, with amps only where the supply shows any. */
function readings({ job }: Plan): Content {
  const units = readingUnitsOf(job);
  const heads = [
    classTexts.minute,
    unitSymbol('V'),
    ...(job.supply.showsAmps ? [unitSymbol('A')] : []),
    symbolRead('degC', units),
  ];
  return {
    unbreakable: true,
    margin: [0, 10, 0, 0],
    stack: [
      { text: classTexts.readings, bold: true, fontSize: 12, lineHeight: 1, margin: [0, 0, 0, 2] },
      {
        table: {
          widths: heads.map(() => '*'),
          heights: (i) => (i === 0 ? 11 : 19),
          body: [
            heads.map((text): TableCell => ({ text, fontSize: 9.5, color: ink.soft, lineHeight: 1 })),
            ...Array.from({ length: READINGS }, () => heads.map((): TableCell => ({ text: '' }))),
          ],
        },
        layout: {
          hLineWidth: () => 0.7,
          vLineWidth: () => 0.7,
          hLineColor: () => ink.black,
          vLineColor: () => ink.soft,
          paddingLeft: () => 4,
          paddingRight: () => 4,
          paddingTop: () => 1,
          paddingBottom: () => 1,
        },
      },
    ],
  };
}

/** Whose piece is which: what was typed, or a line to write on. */
function pieces(names: readonly string[]): Content {
  const cells = names.map((name, n): TableCell => ({
    columns: [
      { width: 18, text: String(n + 1), fontSize: 9.5, color: ink.soft, ...tabular },
      { width: '*', text: name, bold: true, fontSize: 10, lineHeight: 1, wordBreak: 'break-all' },
    ],
  }));
  const rows = Array.from({ length: Math.ceil(cells.length / ACROSS) }, (_, row) =>
    Array.from({ length: ACROSS }, (_cell, n): TableCell => cells[row * ACROSS + n] ?? ''),
  );
  return {
    stack: [
      { text: classTexts.pieces, bold: true, fontSize: 12, lineHeight: 1, margin: [0, 6, 0, 2] },
      {
        table: { widths: Array.from({ length: ACROSS }, () => '*'), heights: 17, body: rows },
        layout: {
          ...ruled(1, false),
          hLineWidth: (i) => (i === 0 ? 0 : 0.7),
          hLineColor: () => ink.soft,
          paddingTop: () => 3,
        },
      },
    ],
  };
}

/** What this station bites, in what. */
function heads(plan: Plan): readonly string[] {
  const { job } = plan;
  const units = readingUnitsOf(job);
  const family = familyOf(plan);
  const bath = fill(
    cardTexts.bath,
    { salt: job.bath.salt, strength: { value: fromSi(job.bath.strength, 'g/L'), unit: 'g/L' } },
    units,
  );
  const { piece } = job;
  const wanted = fill(
    classTexts.wanted,
    {
      count: { text: pieceCount(piece.count) },
      metal: piece.metal,
      depth: { text: depthText(fromSi(piece.depth, 'um'), units) },
    },
    units,
  );
  return [[family === null ? '' : fill('{f}', { f: `group-${family}` }, units), bath].join(' · '), wanted];
}

function firstLook({ settings, job }: Plan): Content[] {
  if (!settings) return [];
  return [
    {
      text: typeset(fill(cardTexts.firstLook, { look: settings.firstLook }, readingUnitsOf(job))),
      bold: true,
      fontSize: 14,
      margin: [0, 8, 0, 0],
    },
  ];
}

/** What is set here, and when it is looked at and stopped. */
const setHere = (plan: Plan): Content[] => [
  ...cardTexts.killers.map((text): Content => ({ text, bold: true, fontSize: 17, lineHeight: 1.02 })),
  ...writeIns(plan).map(writeIn),
  ...firstLook(plan),
  readings(plan),
  { text: cardTexts.splash, bold: true, fontSize: 13, lineHeight: 0.98, margin: [0, 12, 0, 0] },
];

/**
 * A page to stand at one station: what to set, what two people have to see, what to write down, whose pieces these are.
 * @param names of its pieces
 */
export function stationCard(
  plan: Plan,
  { asked }: ClassPack,
  n: number,
  names: readonly string[],
): ContentSection {
  // an adult mixes beforehand: that hold is not this page's
  const holds = cardHolds(plan).filter(([title]) => title !== cardTexts.beforeMixing);
  const station = classTexts.station(n, asked.stations);
  const isLong = names.length > MOST_ON_CARD;
  return {
    pageMargins: [mm(15), mm(10), mm(15), mm(10)],
    header: () => null,
    footer: () => null,
    section: [
      { text: station, bold: true, fontSize: 32, lineHeight: 1 },
      ...heads(plan).map((text): Content => ({
        text: typeset(text),
        bold: true,
        fontSize: 14,
        color: ink.accent,
        lineHeight: 1.05,
      })),
      { text: classTexts.adultStarts, bold: true, fontSize: 20, lineHeight: 1, margin: [0, 6, 0, 4] },
      {
        table: { widths: ['*', '*'], body: [[{ stack: setHere(plan) }, { stack: holds.map(hold) }]] },
        layout: { ...bare, paddingRight: (i) => (i === 0 ? 14 : 0) },
      },
      ...(isLong ? [{ text: station, bold: true, fontSize: 20, pageBreak: 'before' } as Content] : []),
      pieces(names),
    ],
  };
}
