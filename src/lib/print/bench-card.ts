import type { Content } from 'pdfmake/interfaces';
import { hasKnobs, offSignOf } from '../core/facts/supplies.ts';
import type { Plan } from '../core/plan/plan.ts';
import { fromTo, plain } from '$words/locale.ts';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import { fromSi } from '../core/units/convert.ts';
import { withSymbol, withUnit } from '$words/units.ts';
import { cardTexts } from '$words/papers.ts';
import { figureParts, fill } from '$words/render.ts';
import { familyOf } from './bath-hazards.ts';
import { jobMark } from './drawing/job-mark.ts';
import { bare, checkBox } from './drawing/plate-mark.ts';
import type { JobMarks } from './order.ts';
import { ink, mm, tabular } from './paper.ts';
import { place } from './place.ts';
import { hero } from './sheet/glance.ts';
import { typeset } from './typeset.ts';

/** The card, mm: two faces side by side, to be folded back to back. Nothing is printed near the cut. */
export const card = { width: 190, height: 140, face: 95, safe: 5, corner: 4 } as const;

/** Sizes for gloved hands, mm: a box to tick and a box to write in. */
export const box = { tick: 12, write: { width: 36, height: 12.5 } } as const;

const inner = mm(card.face - 2 * card.safe);

export interface WriteIn {
  readonly label: string;
  readonly value: string | null;
  readonly unit: string;
  readonly note: string;
}

export function writeIns({ settings, figures, job }: Plan): WriteIn[] {
  if (!settings) return [];
  const units = readingUnitsOf(job);
  const minutes = figureParts(settings.minutes, units);
  const limits = withUnit(fromTo(minutes.low, minutes.high), 'min');
  const stop = { label: cardTexts.stop, value: minutes.number, unit: 'min' };
  if (settings.control === 'amps') {
    const display = figureParts(settings.display, units);
    const charge = figureParts(settings.stopCharge, units);
    return [
      {
        ...stop,
        note: cardTexts.orCharge
          .replace('{range}', limits)
          .replace('{charge}', withSymbol(charge.number, charge.unit)),
      },
      { label: cardTexts.amps, value: plain(settings.amps), unit: 'A', note: cardTexts.knob },
      {
        label: cardTexts.volts,
        value: display.number,
        unit: 'V',
        note: cardTexts.display.replace('{ceiling}', withUnit(plain(settings.ceiling), 'V')),
      },
    ];
  }
  // Amps are shown only when the maker sets the volts that they were computed for.
  const { current, volts } = figures;
  const isDrawn = current && volts?.value === settings.volts && job.supply.showsAmps;
  const drawn = isDrawn ? figureParts(current, units) : null;
  return [
    { ...stop, note: limits },
    {
      label: cardTexts.volts,
      value: plain(settings.volts),
      unit: 'V',
      note: hasKnobs(job.supply.kind) ? cardTexts.knob : cardTexts.byItself,
    },
    ...(job.supply.showsAmps
      ? [
          {
            label: cardTexts.amps,
            value: drawn?.number ?? null,
            unit: 'A',
            note: drawn
              ? cardTexts.drawn.replace('{range}', fromTo(drawn.low, drawn.high))
              : cardTexts.readOff,
          },
        ]
      : []),
  ];
}

export const writeIn = ({ label, value, unit, note }: WriteIn): Content => ({
  margin: [0, 5, 0, 0],
  columns: [
    {
      width: mm(box.write.width + 3),
      stack: [
        { text: label, bold: true, fontSize: 12 },
        {
          canvas: [
            {
              type: 'rect',
              x: 0.6,
              y: 1,
              w: mm(box.write.width),
              h: mm(box.write.height),
              r: 2,
              lineWidth: 1.2,
              lineColor: ink.black,
            },
          ],
        },
      ],
    },
    {
      width: '*',
      stack: [
        value === null ? { text: ' ', fontSize: 32, lineHeight: 1 } : hero(value, unit, 32),
        { text: typeset(note), fontSize: 12, lineHeight: 1 },
      ],
    },
  ],
});

function front(plan: Plan, marks: JobMarks | null): Content[] {
  const { job } = plan;
  const units = readingUnitsOf(job);
  const family = familyOf(plan);
  const bath = fill(
    cardTexts.bath,
    {
      salt: job.bath.salt,
      strength: { value: fromSi(job.bath.strength, 'g/L'), unit: 'g/L' },
    },
    units,
  );
  const look = plan.settings?.firstLook;
  return [
    {
      columns: [
        {
          width: '*',
          text: family === null ? '' : fill('{f}', { f: `group-${family}` }, units),
          bold: true,
          fontSize: 14,
          color: ink.accent,
        },
        {
          width: 78,
          text: marks?.code ?? '',
          bold: true,
          fontSize: 12,
          alignment: 'right',
          noWrap: true,
          ...tabular,
        },
      ],
    },
    { text: typeset(bath), fontSize: 12, lineHeight: 1 },
    {
      canvas: [
        { type: 'line', x1: 0, y1: 0, x2: inner, y2: 0, lineWidth: 1, lineColor: ink.black },
        { type: 'line', x1: 0, y1: 2.2, x2: inner, y2: 2.2, lineWidth: 0.35, lineColor: ink.black },
      ],
      margin: [0, 4, 0, 4],
    },
    ...cardTexts.killers.map((text): Content => ({ text, bold: true, fontSize: 19, lineHeight: 1.02 })),
    ...writeIns(plan).map(writeIn),
    ...(look
      ? [
          {
            text: fill(cardTexts.firstLook, { look }, units),
            bold: true,
            fontSize: 14,
            margin: [0, 8, 0, 0],
          } as Content,
        ]
      : []),
  ];
}

/**
 * The four holds and their most critical checks, as many as can be printed large enough for a gloved hand.
 */
export const cardHolds = ({ job }: Plan): readonly (readonly [string, readonly string[]])[] => [
  [cardTexts.beforeMixing, [cardTexts.dressed]],
  [cardTexts.beforePower, [cardTexts.dry, cardTexts.open, cardTexts.polarity]],
  [
    cardTexts.beforeLifting,
    [cardTexts.off, cardTexts.seenOff[offSignOf(job.supply.kind, job.supply.showsAmps)]],
  ],
  [cardTexts.beforeStoring, [cardTexts.labelled, cardTexts.loose]],
];

function check(text: string, hold: string | null): Content {
  return {
    table: {
      widths: [mm(box.tick) + 9, '*'],
      body: [
        [
          checkBox(box.tick, 1.2),
          {
            stack: [
              ...(hold === null
                ? []
                : [{ text: hold, fontSize: 12, bold: true, color: ink.accent, lineHeight: 1 }]),
              { text, fontSize: 14, lineHeight: 1 },
            ],
            verticalAlignment: 'middle',
          },
        ],
      ],
    },
    layout: bare,
    margin: [0, hold === null ? 0 : 4, 0, 2.5],
  };
}

/**
 * Side of the QR code on the card with its quiet zone, mm. It is next to the shortest checks, where there is
 * room.
 */
const MARK = 26;

function back(plan: Plan, marks: JobMarks | null): Content[] {
  const groups = cardHolds(plan).map(([hold, checks]): Content => {
    const stack = checks.map((text, i) => check(text, i === 0 ? hold : null));
    if (marks === null || hold !== cardTexts.beforeLifting) return { stack };
    return {
      columns: [
        { width: '*', stack },
        { width: mm(MARK), stack: [jobMark(marks, MARK)] },
      ],
    };
  });
  return [
    ...groups,
    { text: cardTexts.splash, bold: true, fontSize: 13, lineHeight: 0.98, margin: [0, 6, 0, 0] },
  ];
}

/**
 * The cut with rounded corners, and the fold. The front is the right half, so that the card folds like a
 * book.
 */
function outline(x: number, y: number): Content {
  const [width, height, fold] = [mm(card.width), mm(card.height), mm(card.face)];
  return place(x, y, width, {
    canvas: [
      {
        type: 'rect',
        x: 0,
        y: 0,
        w: width,
        h: height,
        r: mm(card.corner),
        lineWidth: 0.4,
        lineColor: ink.soft,
      },
      {
        type: 'line',
        x1: fold,
        y1: 0,
        x2: fold,
        y2: height,
        lineWidth: 0.4,
        lineColor: ink.soft,
        dash: { length: 5, space: 4 },
      },
    ],
  });
}

/** The bench card, to be read from 0.7 m with wet gloves. @param x,y upper left corner, pt */
export const benchCard = (plan: Plan, marks: JobMarks | null, x: number, y: number): Content[] => [
  outline(x, y),
  place(x + mm(card.safe), y + mm(card.safe), inner, ...back(plan, marks)),
  place(x + mm(card.face + card.safe), y + mm(card.safe), inner, ...front(plan, marks)),
];
