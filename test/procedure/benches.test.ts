import { describe, expect, test } from 'vitest';
import { layOutOf } from '../../src/lib/core/plan/lay-out.ts';
import { symptomBenchOf } from '../../src/lib/core/plan/symptom-bench.ts';
import { defaultReadingUnits } from '../../src/lib/core/job/reading-units.ts';
import { checkBasisOf } from '../../src/lib/procedure/check-basis.ts';
import { checksOf, holdIds } from '../../src/lib/procedure/checks.ts';
import { checkTexts, holdTexts } from '../../src/lib/words/en/checks.ts';
import { layOutTexts } from '../../src/lib/words/en/lay-out.ts';
import { hoursText } from '../../src/lib/words/en/plan-page.ts';
import { printPlan } from '../../src/lib/words/en/printed-plan.ts';
import { fill } from '../../src/lib/words/en/render.ts';
import { supplyOffTexts } from '../../src/lib/words/en/run.ts';
import { symptomsByGroup } from '../../src/lib/words/en/symptoms.ts';
import { cardHolds, writeIns } from '../../src/lib/print/bench-card.ts';
import { glance } from '../../src/lib/print/sheet/glance.ts';
import { textsOf } from '../unit/print/definition-texts.ts';
import { pendantDraft, planOfDraft } from '../fixtures/job-at.ts';
import type { Draft } from '../../src/lib/session/draft.ts';

/**
 * Twelve benches, and every line that each is told, in order: what the plan says and lays out, what each hold asks and
 * answers, how the supply is seen off, what each sign that something is wrong means, and what the card says. The scripts
 * are for reading; beside them no line may name what a bench has not got.
 */
interface Bench {
  readonly has: Partial<Draft>;
  /** words that this bench must never hear */
  readonly never: readonly RegExp[];
}

/** Everything that a workshop may have. */
const everything: Partial<Draft> = {
  'workshop.has': 'thermometer multimeter calliper goggles gloves tray jar',
  scale: '0.1',
};
/** Nothing but the supply. */
const nothing: Partial<Draft> = { 'workshop.has': '', scale: 'none' };
const noTools = [/thermometer/i, /multimeter/i, /calliper|gauge/i, /\bscale\b/i, /\bweigh (it|the bare)/i];
const adapter: Partial<Draft> = {
  'supply.kind': 'adapter',
  'supply.amps': 'no',
  'supply.volts': '5',
  'supply.maxAmps': '2',
};
const noKnobs = [/\bknobs?\b/i, /\bmeter\b/i, /^set \d/i];
const noAmps = [/\bmeter at zero\b|meter reads/i, /write down amps/i, /amp-hours/i, /^amps:/i];
const noSilver = [/black crust/i, /silver bath/i];
const noSalt = [/\bweigh \d/i, /dissolve .* in /i, /\bstir\b/i, /let it stand/i, /\bjar’s label says/i];
const notTaught = [/\badult\b/i, /two have seen/i, /learner/i];
const notSold = [/for sale/i, /hallmark/i];
const copper: Partial<Draft> = { 'piece.metal': 'C11000', 'bath.salt': 'NaCl', 'bath.strength': '50' };

const benches: Readonly<Record<string, Bench>> = {
  'silver, bench supply with amps': { has: everything, never: [...notTaught, ...notSold, /\bbattery\b/i] },
  'bench supply without a meter': {
    has: { 'supply.amps': 'no', 'supply.maxAmps': '' },
    never: [...noAmps, ...notTaught, ...notSold],
  },
  adapter: {
    has: { ...adapter, ...nothing },
    never: [...noKnobs, ...noAmps, ...noTools, ...notTaught],
  },
  'adapter with a multimeter in line': {
    has: { ...adapter, 'supply.amps': 'yes', 'workshop.has': 'multimeter' },
    never: [/\bknobs?\b/i, ...notTaught],
  },
  battery: {
    has: { ...adapter, 'supply.kind': 'battery', 'supply.volts': '9' },
    never: [...noKnobs, ...noAmps, /unplug|pull(ed)? (the plug|out)|its plug/i, ...notTaught],
  },
  'no scale': { has: { scale: 'none' }, never: [/\bscale\b/i, /weigh (it|the bare)/i, ...notTaught] },
  'room not known': { has: { 'place.room': '' }, never: notTaught },
  'a class': {
    has: { 'place.use': 'teaching' },
    never: [/soak .* in acetone|wipe it off with acetone/i, ...notSold],
  },
  'a bath from the shelf': {
    has: { 'bath.from': 'shelf', 'bath.record': 'SILVER 1' },
    never: [...noSalt, ...notTaught],
  },
  copper: { has: copper, never: [...noSilver, ...notTaught, ...notSold] },
  brass: { has: { ...copper, 'piece.metal': 'C26000' }, never: [...noSilver, ...notTaught, ...notSold] },
  selling: { has: { 'place.use': 'selling' }, never: notTaught },
};

/** Every line in the order it is met. */
function scriptOf(has: Partial<Draft>): readonly string[] {
  const draft: Draft = { ...pendantDraft, ...has };
  const plan = planOfDraft(draft);
  const basis = checkBasisOf(plan);
  const printed = printPlan(plan);
  const off = supplyOffTexts(draft['supply.kind'], draft['supply.amps'] === 'yes');
  return [
    '# Plan',
    ...layOutOf(plan).map(({ id, params }) => fill(layOutTexts[id], params, defaultReadingUnits)),
    ...hoursText(draft['bath.from'] === 'new', 2, plan.settings?.minutes.value ?? null),
    ...printed.steps.flatMap(({ step, title, lines }) => [
      `# ${title}`,
      ...printed.cautions
        .filter((caution) => caution.step === step)
        .map(({ signal, text }) => `${signal}: ${text}`),
      ...lines.map(({ text }) => text),
    ]),
    ...holdIds.flatMap((hold) => [
      `# ${holdTexts[hold].title}`,
      ...checksOf(hold, basis).flatMap((check) => {
        const { asks, options, fixes } = checkTexts[check.id];
        return [asks, ...Object.values<string>(options), ...Object.values<string>(fixes)].map((text) =>
          fill(text, { salt: plan.job.bath.salt }, defaultReadingUnits),
        );
      }),
    ]),
    '# Off',
    ...Object.values<string>({ ...off }),
    '# Something looks wrong',
    ...symptomsByGroup(symptomBenchOf(plan.job)).flatMap(({ list }) =>
      list.flatMap(({ label, cause, now, next }) => [label, cause, now, next]),
    ),
    '# Card',
    ...cardHolds(plan).flatMap(([title, lines]) => [title, ...lines]),
    ...writeIns(plan).map(({ label, value, unit, note }) => `${label}: ${value ?? '___'} ${unit}, ${note}`),
    '# At a glance',
    ...textsOf({ content: [glance(plan)] }),
  ];
}

describe.each(Object.entries(benches))('%s', (name, { has, never }) => {
  const script = scriptOf(has);
  test('is told so, line by line', async () => {
    await expect(`${script.join('\n')}\n`).toMatchFileSnapshot(
      `../fixtures/benches/${name.replace(/[^a-z]+/g, '-')}.txt`,
    );
  });
  test('hears of nothing that it has not got', () => {
    for (const words of never)
      expect(
        script.filter((line) => words.test(line)),
        String(words),
      ).toEqual([]);
  });
});

test('twelve benches, and what one must not hear another does: the words are looked for in earnest', () => {
  expect(Object.keys(benches)).toHaveLength(12);
  const all = Object.values(benches).flatMap(({ has }) => scriptOf(has));
  for (const words of [...noKnobs, ...noAmps, ...noSilver, /\badult\b/i, /\bweigh \d/i, /\bstir\b/i])
    expect(
      all.some((line) => words.test(line)),
      String(words),
    ).toBe(true);
});
