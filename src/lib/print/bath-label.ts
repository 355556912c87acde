import type { Content } from 'pdfmake/interfaces';
import { labelWidth } from '../core/units/printed.ts';
import { labelTexts } from '$words/papers.ts';
import { svg } from './drawing/hatch.ts';
import { pictogram, pictogramAcross } from './drawing/pictograms.ts';
import type { LabelledBath } from './labelled-bath.ts';
import { ink, mm, tabular } from './paper.ts';
import { place } from './place.ts';
import { typeset } from './typeset.ts';

/** The label without its height, mm. */
export const label = { width: labelWidth, margin: 3.5, band: 10 } as const;

/**
 * Height, mm. What the law requires does not fit 74 × 52 at a legible size, so the label is slightly larger
 * than 105 × 74, the next size that the law names. A bath with many metals, statements or pictograms gets a
 * taller one.
 */
export function labelHeight({ hazards, metals }: LabelledBath): number {
  const { pictograms: signs = [], statements = [] } = hazards ?? {};
  if (signs.length > 4) return 90;
  return metals > 3 || statements.length > 4 ? 86 : 78;
}

/** Small print, pt: an x-height of 1.4 mm, which the law requires of labels on up to 3 L. */
const BODY = 8;

/** A crossed-out cup. */
const noCup = svg(
  22,
  22,
  '<g fill="none" stroke="#fff" stroke-width="1.8" stroke-linecap="round" stroke-linejoin="round">' +
    '<path d="M5 6H15V14Q15 17 12 17H8Q5 17 5 14ZM15 8H17.500Q19 8 19 9.500V11Q19 13 17 13H15"/><path d="M2 20L20 2"/></g>',
);

/** Pictograms in a zigzag, because squares standing on a corner fit together so. */
function pictograms(codes: Parameters<typeof pictogram>[0][], right: number, top: number): Content[] {
  const step = pictogramAcross / 2 + 1;
  const left = right - (codes.length > 1 ? step : 0) - pictogramAcross;
  return codes.map((code, i) =>
    place(left + (i % 2) * step, top + i * step, pictogramAcross, { svg: pictogram(code) }),
  );
}

function words({ head, jar, contents, hazards, never }: LabelledBath): Content[] {
  return [
    {
      columns: [
        { width: '*', text: head, bold: true, fontSize: 14, lineHeight: 0.9 },
        { width: 'auto', text: jar, fontSize: BODY, margin: [0, 5, 0, 0] },
      ],
    },
    { text: typeset(contents), margin: [0, 1, 0, 3] },
    ...(hazards?.signal
      ? [{ text: hazards.signal, bold: true, fontSize: 13, lineHeight: 0.9 } as Content]
      : []),
    { text: hazards?.statements.join('. ').concat('.') ?? '' },
    ...(never === '' ? [] : [{ text: typeset(never), bold: true, margin: [0, 2, 0, 2] } as Content]),
  ];
}

/** The label of the used bath. @param x,y upper left corner, pt */
export function bathLabel(bath: LabelledBath, x: number, y: number): Content[] {
  const [width, height, margin, band] = [
    mm(label.width),
    mm(labelHeight(bath)),
    mm(label.margin),
    mm(label.band),
  ];
  const codes = [...(bath.hazards?.pictograms ?? [])];
  const picturesWidth = codes.length === 0 ? 0 : pictogramAcross * (codes.length > 1 ? 1.5 : 1) + 3;
  const foot = mm(20.5);
  return [
    place(x, y, width, {
      canvas: [
        { type: 'rect', x: 0, y: 0, w: width, h: height, r: mm(2), lineWidth: 1, lineColor: ink.black },
        {
          type: 'rect',
          x: 2.6,
          y: 2.6,
          w: width - 5.2,
          h: height - 5.2,
          r: mm(1.4),
          lineWidth: 0.4,
          lineColor: ink.black,
        },
        {
          type: 'rect',
          x: 2.6,
          y: 2.6,
          w: width - 5.2,
          h: band - 2.6,
          r: mm(1.4),
          lineWidth: 0,
          color: '#000000',
        },
      ],
    }),
    place(x + margin, y + 4.6, 24, { svg: noCup }),
    place(x + margin + 28, y + 5, width - 2 * margin - 28, {
      text: labelTexts.notFood,
      bold: true,
      fontSize: 17,
      color: '#ffffff',
      lineHeight: 1,
    }),
    place(x + margin, y + band + 4, width - 2 * margin - picturesWidth, {
      stack: words(bath),
      fontSize: BODY,
      lineHeight: 0.93,
    }),
    ...pictograms(codes, x + width - margin + 2, y + band + 4),
    place(x + margin, y + height - foot, width - 2 * margin, {
      stack: [
        { text: labelTexts.eyes },
        {
          columns: [
            { width: '*', text: labelTexts.swallowed },
            { width: 'auto', text: labelTexts.poison, bold: true },
          ],
        },
        {
          columns: bath.dates.map((text) => ({ width: 'auto', text })),
          columnGap: 8,
          margin: [0, 4, 0, 1],
        },
        {
          columns: [
            { width: '*', text: labelTexts.reach, bold: true },
            {
              width: 66,
              alignment: 'right',
              noWrap: true,
              text: bath.code,
              ...tabular,
            },
          ],
        },
        { text: labelTexts.byIngredient, fontSize: 6.9 },
      ],
      fontSize: BODY,
      lineHeight: 0.93,
    }),
  ];
}
