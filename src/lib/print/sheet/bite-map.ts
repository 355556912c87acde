import type { Content, TableCell } from 'pdfmake/interfaces';
import { bandsOf } from '../../core/field/depth-map.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { Plan } from '../../core/plan/plan.ts';
import { plain } from '$words/locale.ts';
import { bandText, biteMapSummary, biteMapTexts } from '$words/bite-map.ts';
import { depthBands, strengthOf, thinned } from '../drawing/depth-bands.ts';
import { round, svg } from '../drawing/hatch.ts';
import { ruled } from '../drawing/plate-mark.ts';
import { ink, mm, tabular } from '../paper.ts';
import { typeset } from '../typeset.ts';
import { sectionHeading } from './section-heading.ts';

/** Length of the longer side of the drawn face, pt. */
const SIDE = mm(78);

const swatch = (fill: string): string =>
  svg(
    14,
    9,
    `<rect x="0.3" y="0.3" width="${round(13.4)}" height="8.4" fill="${fill}" stroke="${ink.black}" stroke-width="0.4"/>`,
  );

/** The bite map of the plan's drawing; nothing for a plan without one. */
export function biteMap({ map, job }: Plan): Content[] {
  // plans stored by older versions have no map
  if (!map) return [];
  const units = readingUnitsOf(job);
  const mean = job.piece.depth * 1e6;
  const bands = bandsOf(map, mean);
  const head: TableCell[] = ['', biteMapTexts.depth, biteMapTexts.share].map((text) => ({
    text,
    fontSize: 8,
    color: ink.soft,
  }));
  const rows = bands.map((band, n): TableCell[] => [
    { svg: swatch(thinned(strengthOf(n, bands.length))), margin: [0, 2.5, 0, 0] },
    { text: typeset(bandText(band, units)), ...tabular },
    { text: typeset(`${plain(100 * band.share, 2)} %`), ...tabular },
  ]);
  return [
    {
      unbreakable: true,
      margin: [0, 6, 0, 12],
      stack: [
        sectionHeading(
          biteMapTexts.title,
          `${biteMapSummary(bands, mean, null, units)} ${biteMapTexts.model}`,
        ),
        {
          columns: [
            { width: 'auto', stack: [{ svg: depthBands(map, bands, SIDE, units) }] },
            {
              width: '*',
              margin: [18, 0, 0, 0],
              fontSize: 9.5,
              table: { widths: [20, 'auto', 'auto'], body: [head, ...rows] },
              layout: ruled(2, true),
            },
          ],
        },
      ],
    },
  ];
}
