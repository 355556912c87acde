import type { Content, ContentSection, TableCell, TDocumentDefinitions } from 'pdfmake/interfaces';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import type { ClassPack } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import {
  afterLines,
  beforeLines,
  bringLines,
  classTexts,
  clockOf,
  partNames,
  timeText,
} from '$words/class.ts';
import { withUnit } from '$words/units.ts';
import { language } from '$words/locale.ts';
import { checkBox, plateMark, ruled } from './drawing/plate-mark.ts';
import { signalPanel } from './drawing/signal-panel.ts';
import type { ClassOrder } from './order.ts';
import { dayOf, faces, ink, mm, pageSizes, sheetMargin, tabular } from './paper.ts';
import { stationCard } from './station-card.ts';
import { typeset } from './typeset.ts';

const heading = (text: string): Content => ({ text, bold: true, fontSize: 14, margin: [0, 7, 0, 2] });

const toTick = (text: string): Content => ({
  columns: [
    { width: 20, stack: [checkBox(4.6, 0.9)] },
    { width: '*', text: typeset(text), fontSize: 10.5, lineHeight: 1 },
  ],
  margin: [0, 0, 0, 3],
});

/** Start and duration of each part. */
function evening({ parts }: ClassPack): Content {
  const head = [classTexts.begins, classTexts.takes, classTexts.part];
  return {
    table: {
      widths: [54, 60, '*'],
      body: [
        head.map((text): TableCell => ({ text, fontSize: 9, color: ink.soft })),
        ...parts.map(({ id, from, minutes }): TableCell[] => [
          { text: clockOf(from), bold: true, ...tabular },
          { text: typeset(withUnit(String(minutes), 'min')), ...tabular },
          { text: partNames[id] },
        ]),
      ],
    },
    layout: ruled(2, true),
  };
}

function leaderSheet(plan: Plan, pack: ClassPack): ContentSection {
  return {
    pageMargins: [sheetMargin, mm(14), sheetMargin, mm(12)],
    header: () => null,
    footer: () => null,
    section: [
      { text: `Etchwright · ${classTexts.title}`, fontSize: 10, bold: true, color: ink.accent },
      { text: typeset(plan.job.title), fontSize: 26, bold: true, lineHeight: 1 },
      {
        columns: [
          { width: '*', text: classTexts.leader, fontSize: 11, color: ink.soft },
          { width: 230, text: `${classTexts.blank} ______________________________`, fontSize: 10 },
        ],
        margin: [0, 2, 0, 8],
      },
      signalPanel('WARNING', classTexts.rules.join(' '), 10),
      {
        columns: [
          {
            width: '*',
            stack: [heading(classTexts.bring), ...bringLines(pack).map(toTick)],
          },
          {
            width: '*',
            stack: [heading(classTexts.before), ...beforeLines(plan, pack).map(toTick)],
          },
        ],
        columnGap: 18,
      },
      heading(classTexts.evening),
      evening(pack),
      {
        text: typeset(timeText(pack, readingUnitsOf(plan.job))),
        bold: true,
        fontSize: 11,
        margin: [0, 6, 0, 0],
      },
      { text: classTexts.own, fontSize: 8.5, color: ink.soft, margin: [0, 2, 0, 0] },
      heading(classTexts.after),
      plateMark(
        afterLines(pack).map((text): Content => ({
          text: typeset(text),
          fontSize: 10.5,
          lineHeight: 1,
          margin: [0, 0, 0, 3],
        })),
      ),
    ],
  };
}

/** Papers for a class: a sheet for the person who leads it, and a page for each station. */
export function classPapers({ plan, pack, paper }: ClassOrder): TDocumentDefinitions {
  const stations = Array.from({ length: pack.asked.stations }, (_, n) => stationCard(plan, pack, n + 1));
  return {
    pageSize: pageSizes[paper],
    language,
    displayTitle: true,
    version: '1.7',
    info: {
      title: `${plan.job.title} · ${classTexts.title}`,
      creator: 'Etchwright',
      producer: 'Etchwright',
      creationDate: dayOf(plan.dataVersion),
    },
    defaultStyle: { font: faces.text, fontSize: 11, color: ink.black },
    content: [leaderSheet(plan, pack), ...stations],
  };
}
