import type { Content, ContentSection } from 'pdfmake/interfaces';
import type { FirstAidLine } from '../core/facts/first-aid.ts';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import { resistFacts } from '../core/facts/resists.ts';
import type { Plan } from '../core/plan/plan.ts';
import { helpFirst, helpPages } from '$words/help.ts';
import type { HelpPage } from '$words/help.ts';
import { laminateText, stripTexts } from '$words/papers.ts';
import { familyOf } from './bath-hazards.ts';
import { cutPage } from './cut-page.ts';
import { outline } from './drawing/outline.ts';
import { bare } from './drawing/plate-mark.ts';
import { ink, mm } from './paper.ts';
import { place } from './place.ts';

/** The first-aid strip, mm. It hangs on the wall and is read from a step away. */
export const strip = { width: 190, height: 241, inset: 6 } as const;

/** The lines that this job's salt and metal need. */
function ownLines(plan: Plan): ReadonlySet<FirstAidLine> {
  const { salt } = plan.job.bath;
  const lines: FirstAidLine[] = ['eye-metal', 'mouth-metal'];
  if (familyOf(plan) === 'silver') lines.push('skin-silver', 'gas-ammonia', 'cut-silver');
  if (salt.endsWith('NO3')) lines.push('skin-nitrate', 'mouth-nitrate', 'gas-brown', 'fire-nitrate');
  if (salt === 'NaCl') lines.push('gas-chlorine');
  if (resistFacts[plan.job.resist].remover !== null)
    lines.push('skin-solvent', 'gas-solvent', 'fire-solvent');
  return new Set(lines);
}

function row({ name, lines, differs }: HelpPage, own: ReadonlySet<FirstAidLine>): Content[] {
  return [
    { text: name, bold: true, fontSize: 14.5, lineHeight: 0.95 },
    {
      stack: [
        { text: lines.map(({ text }) => text).join(' '), fontSize: 9.8, lineHeight: 0.96 },
        ...differs
          .filter(({ id }) => own.has(id))
          .map(({ of, text }): Content => ({
            text: [{ text: `${of}: `, bold: true }, text],
            fontSize: 10,
            lineHeight: 1,
            margin: [0, 1.5, 0, 0],
          })),
      ],
    },
  ];
}

/** First aid on one strip to hang by the bench, with the lines that this job's salt and metal need. */
export function stripPage(plan: Plan): ContentSection {
  const own = ownLines(plan);
  const inner = mm(strip.width - 2 * strip.inset);
  return cutPage(plan.job.paper, (left, top) => ({
    content: [
      outline(left, top, strip.width, strip.height),
      place(
        left + mm(strip.inset),
        top + mm(strip.inset),
        inner,
        {
          columns: [
            { text: stripTexts.title, bold: true, fontSize: 26, width: 130, lineHeight: 0.9 },
            { text: helpFirst, bold: true, fontSize: 11, width: '*', lineHeight: 1 },
          ],
        },
        {
          columns: stripTexts.numbers.map((text) => ({ text, fontSize: 12, width: '*' })),
          margin: [0, 7, 0, 5],
        },
        {
          table: { widths: [78, '*'], body: helpPages.map((page) => row(page, own)) },
          layout: {
            ...bare,
            hLineWidth: (i) => (i === 0 ? 1.2 : 0.4),
            hLineColor: () => ink.black,
            paddingTop: () => 2.6,
            paddingBottom: () => 2.6,
          },
        },
      ),
      place(left + mm(149), top + mm(strip.height + 6), mm(41), {
        text: laminateText('hang', readingUnitsOf(plan.job)),
        fontSize: 8.5,
        color: ink.soft,
        lineHeight: 1,
      }),
    ],
    bottom: top + mm(strip.height),
  }));
}
