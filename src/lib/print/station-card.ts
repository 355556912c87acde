import type { Column, Content, ContentSection } from 'pdfmake/interfaces';
import type { ClassPack } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import { fromSi } from '../core/units/convert.ts';
import { classTexts } from '$words/class.ts';
import { cardTexts } from '$words/papers.ts';
import { fill } from '$words/render.ts';
import { familyOf } from './bath-hazards.ts';
import { box, cardHolds, writeIn, writeIns } from './bench-card.ts';
import { bare, checkBox } from './drawing/plate-mark.ts';
import { ink, mm } from './paper.ts';
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

/** The page for one station: what to set, and what two people have to check. */
export function stationCard(plan: Plan, { asked }: ClassPack, n: number): ContentSection {
  const family = familyOf(plan);
  const units = readingUnitsOf(plan.job);
  const bath = fill(
    cardTexts.bath,
    {
      salt: plan.job.bath.salt,
      strength: { value: fromSi(plan.job.bath.strength, 'g/L'), unit: 'g/L' },
    },
    units,
  );
  // an adult mixes the bath beforehand, so that hold is not on this page
  const holds = cardHolds(plan).filter(([title]) => title !== cardTexts.beforeMixing);
  return {
    pageMargins: [mm(15), mm(12), mm(15), mm(12)],
    header: () => null,
    footer: () => null,
    section: [
      { text: classTexts.station(n, asked.stations), bold: true, fontSize: 36, lineHeight: 1 },
      {
        text: typeset(
          [family === null ? '' : fill('{f}', { f: `group-${family}` }, units), bath].join(' · '),
        ),
        bold: true,
        fontSize: 14,
        color: ink.accent,
      },
      { text: classTexts.adultStarts, bold: true, fontSize: 20, lineHeight: 1, margin: [0, 8, 0, 4] },
      {
        table: {
          widths: ['*', '*'],
          body: [
            [
              {
                stack: [
                  ...cardTexts.killers.map((text): Content => ({
                    text,
                    bold: true,
                    fontSize: 17,
                    lineHeight: 1.02,
                  })),
                  ...writeIns(plan).map(writeIn),
                  {
                    text: cardTexts.splash,
                    bold: true,
                    fontSize: 13,
                    lineHeight: 0.98,
                    margin: [0, 14, 0, 0],
                  },
                ],
              },
              { stack: holds.map(hold) },
            ],
          ],
        },
        layout: { ...bare, paddingRight: (i) => (i === 0 ? 14 : 0) },
      },
    ],
  };
}
