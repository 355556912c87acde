import type { Content, TableCell } from 'pdfmake/interfaces';
import { sources as catalogue } from '../../core/facts/sources.ts';
import type { Source } from '../../core/facts/sources.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { ReadingUnits } from '../../core/job/reading-units.ts';
import type { Plan } from '../../core/plan/plan.ts';
import type { FigureId } from '../../core/plan/outcome.ts';
import type { Figure, WorkingInput } from '../../core/units/figure.ts';
import { evidenceNames, figureName, inputName, remarkText } from '$words/figures.ts';
import { figureGroups, sheetTexts, sourceReadings } from '$words/papers.ts';
import { figureText } from '$words/render.ts';
import { amountText } from '$words/units.ts';
import { bare, ruled } from '../drawing/plate-mark.ts';
import { faces, ink, tabular } from '../paper.ts';
import { typeset, typesetFormula } from '../typeset.ts';
import { sectionHeading } from './section-heading.ts';

/** Numbers of the sources, in the order in which the workings name them. */
type Numbers = ReadonlyMap<string, number>;

type Entry = readonly [FigureId, Figure];

const entriesOf = (plan: Plan): Entry[] =>
  figureGroups.flatMap(({ ids }) =>
    ids.flatMap((id): Entry[] => {
      const figure = plan.figures[id];
      return figure ? [[id, figure]] : [];
    }),
  );

function numbersOf(entries: readonly Entry[]): Numbers {
  const ids = entries.flatMap(([, { working }]) => [
    ...working.inputs.flatMap((input) => input.sources),
    ...working.sources,
  ]);
  return new Map([...new Set(ids)].map((id, i) => [id, i + 1]));
}

const cite = (ids: readonly string[], numbers: Numbers): string =>
  ids.length === 0
    ? ''
    : `[${ids
        .map((id) => numbers.get(id) ?? 0)
        .sort((a, b) => a - b)
        .join(', ')}]`;

function inputRow(
  { id, value, unit, evidence, sources }: WorkingInput,
  numbers: Numbers,
  units: ReadingUnits,
): TableCell[] {
  const cited = cite(sources, numbers);
  return [
    { text: typeset(inputName(id, units)) },
    { text: typeset(amountText(value, unit, units)), alignment: 'right', ...tabular },
    { text: `${evidenceNames[evidence]}${cited === '' ? '' : `\u00a0${cited}`}`, color: ink.soft },
  ];
}

function working([id, figure]: Entry, numbers: Numbers, units: ReadingUnits): Content {
  const { formula, inputs, remarks, sources } = figure.working;
  const rows = inputs.map((input) => inputRow(input, numbers, units));
  const rests = cite(sources, numbers);
  return {
    fontSize: 8,
    lineHeight: 0.95,
    stack: [
      { text: typeset(figureName(id, units)), bold: true, fontSize: 9.5 },
      { text: typeset(figureText(figure, units)), fontSize: 9, ...tabular },
      {
        text: typesetFormula(formula, { bold: true, font: faces.quiet }),
        fontSize: 9,
        color: ink.accent,
        margin: [0, 1, 0, 2],
      },
      ...(rows.length === 0
        ? []
        : [
            {
              table: { widths: ['*', 62, 78], body: rows },
              layout: { ...bare, paddingLeft: (i: number) => (i === 0 ? 0 : 5) },
            },
          ]),
      ...remarks.map((remark): Content => ({
        text: typeset(remarkText(remark, units)),
        margin: [0, 1.5, 0, 0],
      })),
      ...(rests === ''
        ? []
        : [{ text: `${sheetTexts.restsOn} ${rests}`, color: ink.soft, margin: [0, 1.5, 0, 0] } as Content]),
    ],
  };
}

/** Workings in pairs side by side. A row is never split between pages. */
function pairs(entries: readonly Entry[], numbers: Numbers, units: ReadingUnits): TableCell[][] {
  const rows: TableCell[][] = [];
  for (let i = 0; i < entries.length; i += 2) {
    const [left, right] = [entries[i], entries[i + 1]];
    if (left)
      rows.push([working(left, numbers, units), right ? working(right, numbers, units) : { text: '' }]);
  }
  return rows;
}

function sourceRows(numbers: Numbers): TableCell[][] {
  const known: Readonly<Record<string, Source>> = catalogue;
  return [...numbers].map(([id, number]) => {
    const source = known[id];
    const address = source?.address === undefined ? '' : `. ${source.address}`;
    return [
      { text: String(number), alignment: 'right', color: ink.soft, ...tabular },
      { text: source ? sourceReadings[source.how] : '', color: ink.accent },
      { text: typeset(`${source?.title ?? id}${address}`) },
    ];
  });
}

/** The workings: how every figure was computed, and its sources. */
export function annex(plan: Plan): Content[] {
  const entries = entriesOf(plan);
  if (entries.length === 0) return [];
  const numbers = numbersOf(entries);
  const [first, ...rest] = sourceRows(numbers);
  const table = (body: TableCell[][]): Content => ({
    table: { widths: [14, 70, '*'], dontBreakRows: true, body },
    layout: ruled(1.1, false),
    fontSize: 8.5,
    lineHeight: 0.95,
  });
  return [
    {
      pageBreak: 'before',
      ...(sectionHeading(sheetTexts.workings, sheetTexts.workingsNote) as object),
    } as Content,
    {
      table: {
        widths: ['*', '*'],
        dontBreakRows: true,
        body: pairs(entries, numbers, readingUnitsOf(plan.job)),
      },
      layout: {
        ...ruled(6, false),
        paddingLeft: (i) => (i === 0 ? 0 : 9),
        paddingRight: (i) => (i === 0 ? 9 : 0),
      },
      margin: [0, 0, 0, 8],
    },
    ...(first
      ? [
          {
            unbreakable: true,
            stack: [sectionHeading(sheetTexts.sources, sheetTexts.sourcesNote), table([first])],
          } as Content,
          ...(rest.length > 0 ? [table(rest)] : []),
        ]
      : []),
  ];
}
