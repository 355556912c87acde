import type { Column, Content } from 'pdfmake/interfaces';
import { hasKnobs, offSignOf } from '../../core/facts/supplies.ts';
import type { Plan } from '../../core/plan/plan.ts';
import { plain } from '$words/locale.ts';
import { readingUnitsOf } from '../../core/job/reading-units.ts';
import type { Figure } from '../../core/units/figure.ts';
import { sheetTexts } from '$words/papers.ts';
import { figureParts, fill } from '$words/render.ts';
import { bare, plateMark } from '../drawing/plate-mark.ts';
import { rangeBand } from '../drawing/range-bar.ts';
import { faces, ink, tabular } from '../paper.ts';
import { typeset } from '../typeset.ts';

/** A figure and the ends of its range, as text. */
interface Shown {
  readonly figure: Figure;
  readonly low: string;
  readonly high: string;
}

/** Width of the range band below a large figure, pt. */
const BAND = 96;

/** A number that can be read from across the bench, with its unit beside it in lighter weight. */
export const hero = (value: string, unit: string, fontSize: number): Content => ({
  text: [
    { text: value, bold: true, fontSize, ...tabular },
    ...typeset(` ${unit}`, { fontSize: fontSize * 0.55, font: faces.quiet }),
  ],
  lineHeight: 0.95,
});

function limits({ figure, low, high }: Shown): Content[] {
  if (figure.low === figure.high) return [];
  const end = (text: string, alignment: 'left' | 'right'): Column => ({
    width: BAND / 2,
    text,
    fontSize: 8.5,
    color: ink.soft,
    alignment,
    ...tabular,
  });
  return [
    { svg: rangeBand(figure, BAND), margin: [0, 1, 0, 0] },
    { columns: [end(low, 'left'), end(low === high ? '' : high, 'right')] },
  ];
}

interface Pane {
  readonly head: string;
  readonly value: string;
  readonly unit: string;
  readonly shown?: Shown;
  readonly note: string;
}

function panesOf({ settings, job }: Plan): Pane[] {
  if (!settings) return [];
  const units = readingUnitsOf(job);
  const { minutes } = settings;
  const isSet = hasKnobs(job.supply.kind);
  const shown = (figure: Figure): Pick<Pane, 'value' | 'unit' | 'shown'> => {
    const { number, unit, low, high } = figureParts(figure, units);
    return { value: number, unit, shown: { figure, low, high } };
  };
  const panes: Pane[] =
    settings.control === 'amps'
      ? [
          {
            head: sheetTexts.set,
            value: plain(settings.amps),
            unit: 'A',
            note: fill(
              sheetTexts.ceiling,
              {
                ceiling: { value: settings.ceiling, unit: 'V' },
                display: settings.display,
              },
              units,
            ),
          },
          {
            head: sheetTexts.stopAfter,
            ...shown(minutes),
            note: fill(
              sheetTexts.atCharge,
              {
                charge: settings.stopCharge,
                amps: { value: settings.amps, unit: 'A' },
              },
              units,
            ),
          },
        ]
      : [
          {
            head: isSet ? sheetTexts.set : sheetTexts.gives,
            value: plain(settings.volts),
            unit: 'V',
            note: isSet ? sheetTexts.voltsKnob : sheetTexts.noKnob,
          },
          { head: sheetTexts.stopAfter, ...shown(minutes), note: sheetTexts.currentOn },
        ];
  return [
    ...panes,
    {
      head: sheetTexts.firstLook,
      ...shown(settings.firstLook),
      note: sheetTexts.lookHow[offSignOf(job.supply.kind, job.supply.showsAmps)],
    },
  ];
}

const paneContent = ({ head, value, unit, shown, note }: Pane): Content => ({
  stack: [
    { text: head, bold: true, fontSize: 10.5, color: ink.accent },
    hero(value, unit, 36),
    ...(shown ? limits(shown) : []),
    { text: typeset(note), fontSize: 9.5, lineHeight: 0.98, margin: [0, 4, 0, 0] },
  ],
});

/** What to set, when to stop and when to look first, large enough to read while standing. */
export function glance(plan: Plan): Content {
  const panes = panesOf(plan);
  const rows: Content[] =
    panes.length === 0
      ? [{ text: sheetTexts.noSettings, fontSize: 12 }]
      : [
          {
            table: { widths: panes.map(() => '*'), body: [panes.map(paneContent)] },
            layout: {
              ...bare,
              vLineWidth: (i) => (i === 0 || i === panes.length ? 0 : 0.4),
              vLineColor: () => ink.faint,
              paddingLeft: (i) => (i === 0 ? 0 : 10),
              paddingRight: (i) => (i === panes.length - 1 ? 0 : 10),
            },
          },
        ];
  return plateMark([...rows, { text: sheetTexts.always, bold: true, fontSize: 12.5, margin: [0, 8, 0, 0] }], {
    padding: 10,
  });
}
