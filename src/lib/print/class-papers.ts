import type { Content, ContentSection, TableCell, TDocumentDefinitions } from 'pdfmake/interfaces';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import type { ClassPack } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import { afterLines, beforeLines, classTexts, eveningRows, timeText } from '$words/class.ts';
import { needLines } from '$words/class-needs.ts';
import { language } from '$words/locale.ts';
import { checkBox, plateMark, ruled } from './drawing/plate-mark.ts';
import { signalPanel } from './drawing/signal-panel.ts';
import { sheetsOf } from './label-sheet.ts';
import { labelOfPlan } from './labelled-bath.ts';
import type { LabelledBath } from './labelled-bath.ts';
import type { ClassOrder } from './order.ts';
import { dayOf, faces, ink, mm, pageSizes, sheetMargin, tabular } from './paper.ts';
import { stationCard } from './station-card.ts';
import { stripPage } from './strip-page.ts';
import { typeset } from './typeset.ts';
import { wearPage } from './wear-page.ts';

const heading = (text: string): Content => ({ text, bold: true, fontSize: 14, margin: [0, 7, 0, 2] });

const toTick = (text: string): Content => ({
  columns: [
    { width: 20, stack: [checkBox(4.6, 0.9)] },
    { width: '*', text: typeset(text), fontSize: 10.5, lineHeight: 1 },
  ],
  margin: [0, 0, 0, 3],
});

/** When each part begins, and how long it takes. */
function evening(pack: ClassPack): Content {
  const head = [classTexts.begins, classTexts.takes, classTexts.part];
  return {
    table: {
      widths: [54, 76, '*'],
      body: [
        head.map((text): TableCell => ({ text, fontSize: 9, color: ink.soft })),
        ...eveningRows(pack).map(({ begins, takes, what }): TableCell[] => [
          { text: begins, bold: true, ...tabular },
          { text: typeset(takes), ...tabular },
          { text: what },
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
      heading(classTexts.before),
      ...beforeLines(plan, pack).map(toTick),
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

/** What to buy and lay out, added up: the paper to take to the shop. */
function needsSheet(plan: Plan, pack: ClassPack): ContentSection {
  return {
    pageMargins: [sheetMargin, mm(14), sheetMargin, mm(12)],
    header: () => null,
    footer: () => null,
    section: [
      { text: `Etchwright · ${classTexts.title}`, fontSize: 10, bold: true, color: ink.accent },
      { text: classTexts.bring, fontSize: 26, bold: true, lineHeight: 1, margin: [0, 0, 0, 10] },
      ...needLines(pack, readingUnitsOf(plan.job)).map(toTick),
    ],
  };
}

/** A label for the bath of each station. */
const labels = (plan: Plan, { asked }: ClassPack): LabelledBath[] =>
  Array.from({ length: asked.stations }, (_, n) =>
    labelOfPlan(plan, '', classTexts.station(n + 1, asked.stations)),
  );

/**
 * Papers for a class: the sheet of whoever leads it, the shopping list, a page for each station, first aid and what to
 * wear to hang up, and a label for each bath.
 */
export function classPapers({ plan: planned, pack, paper, names }: ClassOrder): TDocumentDefinitions {
  const plan = { ...planned, job: { ...planned.job, paper } };
  const stations = Array.from({ length: pack.asked.stations }, (_, n) =>
    stationCard(
      plan,
      pack,
      n + 1,
      Array.from({ length: plan.job.piece.count }, (_name, piece) => names[n]?.[piece] ?? ''),
    ),
  );
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
    content: [
      leaderSheet(plan, pack),
      needsSheet(plan, pack),
      ...stations,
      stripPage(plan),
      wearPage(plan),
      ...sheetsOf(labels(plan, pack), paper, 0),
    ],
  };
}
