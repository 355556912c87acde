import type { Content, ContentSection, TableCell } from 'pdfmake/interfaces';
import { findBoughtSalt } from '../core/facts/salts.ts';
import type { BathSalt } from '../core/facts/salts.ts';
import { resistFacts } from '../core/facts/resists.ts';
import { worn } from '../core/facts/wear.ts';
import type { ThingId, Verdict, Worn } from '../core/facts/wear.ts';
import { readingUnitsOf } from '../core/job/reading-units.ts';
import type { Plan } from '../core/plan/plan.ts';
import { laminateText, wearTexts } from '$words/papers.ts';
import {
  airTexts,
  bodyTexts,
  eyeTexts,
  labelWins,
  materialNames,
  otherNames,
  thingNames,
  verdictWords,
} from '$words/wear.ts';
import { familyOf, hasLead } from './bath-hazards.ts';
import { cutPage } from './cut-page.ts';
import { outline } from './drawing/outline.ts';
import { bare } from './drawing/plate-mark.ts';
import { ink, mm } from './paper.ts';
import { place } from './place.ts';

/** Size of the card, mm. */
export const wearCard = { width: 190, height: 156, inset: 7 } as const;

const saltThings: Readonly<Record<BathSalt, ThingId>> = {
  NaNO3: 'sodium-nitrate',
  KNO3: 'potassium-nitrate',
  NaCl: 'table-salt',
  CuSO4: 'copper-sulfate',
  Na2SO4: 'sodium-sulfate',
  KCl: 'potassium-chloride',
  K2SO4: 'potassium-sulfate',
};
const removerThings = { acetone: 'acetone', alcohol: 'isopropanol', 'white-spirit': null } as const;

/** The bath, by the worst substance in it: dissolved metal comes before what the salt can give off. */
function bathThing(plan: Plan, isChloride: boolean): ThingId {
  const family = familyOf(plan);
  if (hasLead(plan)) return 'leaded-brass-bath';
  if (family === 'nickel') return 'nickel-bath';
  if (family === 'iron') return 'iron-bath';
  if (family === 'silver') return 'silver-bath';
  return isChloride ? 'salt-water-bath' : 'copper-bath';
}

/** What is open during this job: the dry salt, the bath, and what removes the resist. */
export function thingsOf(plan: Plan): readonly ThingId[] {
  const facts = findBoughtSalt(plan.job.bath.salt)?.facts;
  const { remover } = resistFacts[plan.job.resist];
  const solvent = remover === null ? null : removerThings[remover];
  return [
    ...(facts === undefined ? [] : [saltThings[facts.id as BathSalt]]),
    bathThing(plan, facts?.anion === 'chloride'),
    ...(solvent === null ? [] : [solvent]),
  ];
}

const verdicts: readonly Verdict[] = ['wear', 'splash', 'never'];

function gloves({ gloves: all }: Worn): Content[] {
  return verdicts.flatMap((verdict): Content[] => {
    const names = all
      .filter((glove) => glove.verdict === verdict)
      .map(({ material }) => materialNames[material]);
    if (names.length === 0) return [];
    return [{ text: [{ text: `${verdictWords[verdict]}: `, bold: true }, `${names.join('; ')}.`] }];
  });
}

const cell = (content: Content | readonly Content[]): TableCell => ({
  stack: Array.isArray(content) ? [...(content as readonly Content[])] : [content as Content],
  fontSize: 10.5,
  lineHeight: 1,
});

function table(things: readonly ThingId[]): Content {
  const all = things.map((id): Worn => worn[id]);
  const line = (name: string, cells: readonly TableCell[]): TableCell[] => [
    { text: name, bold: true, fontSize: 12, color: ink.accent },
    ...cells,
  ];
  return {
    table: {
      widths: [46, ...things.map(() => '*')],
      body: [
        [
          '',
          ...things.map((id): TableCell => ({
            stack: [
              { text: thingNames[id], bold: true, fontSize: 14, lineHeight: 0.95 },
              { text: otherNames[id] ?? '', fontSize: 9, color: ink.soft, lineHeight: 1 },
            ],
          })),
        ],
        line(
          wearTexts.gloves,
          all.map((thing) => cell(gloves(thing))),
        ),
        line(
          wearTexts.eyes,
          all.map(({ eyes }) => cell({ text: eyeTexts[eyes] })),
        ),
        line(
          wearTexts.body,
          all.map(({ body }) => cell({ text: bodyTexts[body] })),
        ),
        line(
          wearTexts.air,
          all.map(({ air }) => cell({ text: airTexts[air] })),
        ),
      ],
    },
    layout: {
      ...bare,
      hLineWidth: (i, { table: { body } }) => (i === 0 || i === body.length ? 0 : i === 1 ? 1 : 0.4),
      hLineColor: () => ink.black,
      paddingTop: () => 4,
      paddingBottom: () => 4,
      paddingLeft: (i) => (i === 0 ? 0 : 8),
    },
  };
}

/** The card with what to wear for this job's salt, bath and remover. */
export function wearPage(plan: Plan): ContentSection {
  return cutPage(plan.job.paper, (left, top) => ({
    content: [
      outline(left, top, wearCard.width, wearCard.height),
      place(
        left + mm(wearCard.inset),
        top + mm(wearCard.inset),
        mm(wearCard.width - 2 * wearCard.inset),
        { text: wearTexts.title, bold: true, fontSize: 22, lineHeight: 0.95, margin: [0, 0, 0, 4] },
        table(thingsOf(plan)),
      ),
      place(
        left + mm(wearCard.inset),
        top + mm(wearCard.height - 12),
        mm(wearCard.width - 2 * wearCard.inset),
        { text: labelWins, bold: true, fontSize: 11, lineHeight: 1 },
      ),
      place(left + mm(149), top + mm(wearCard.height + 6), mm(41), {
        text: laminateText('hang', readingUnitsOf(plan.job)),
        fontSize: 8.5,
        color: ink.soft,
        lineHeight: 1,
      }),
    ],
    bottom: top + mm(wearCard.height),
  }));
}
