import { expect, test, vi } from 'vitest';
import type * as BenchFacts from '../../../src/lib/core/facts/limits.ts';
import type * as Selling from '../../../src/lib/core/facts/selling.ts';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import { checkTexts } from '../../../src/lib/words/en/checks.ts';
import { helpTiles } from '../../../src/lib/words/en/help.ts';
import { lawTexts } from '../../../src/lib/words/en/law.ts';
import { alarmText } from '../../../src/lib/words/en/readings.ts';
import { fill } from '../../../src/lib/words/en/render.ts';
import { refusalTexts } from '../../../src/lib/words/en/rules.ts';

vi.mock('../../../src/lib/core/facts/limits.ts', async (original) => {
  const facts = await original<typeof BenchFacts>();
  const { limits, practice } = facts;
  return {
    ...facts,
    limits: {
      ...limits,
      planVolts: { ...limits.planVolts, value: 7.25 },
      refusedVolts: { ...limits.refusedVolts, value: 8.25 },
      stopTemperature: { ...limits.stopTemperature, value: 43.25 },
    },
    practice: { ...practice, silverStartVolts: { ...practice.silverStartVolts, value: 4.25 } },
  };
});
vi.mock('../../../src/lib/core/facts/selling.ts', async (original) => {
  const facts = await original<typeof Selling>();
  return { ...facts, lead: { ...facts.lead, value: 0.0625 } };
});

const read = (text: string): string =>
  fill(text, { volts: { value: 12, unit: 'V' } }, defaultReadingUnits).replaceAll('\u00a0', ' ');

test('a limit that moves moves in every text that tells it', () => {
  const { text, instead } = refusalTexts['ten-volts'];
  expect(read(text)).toContain('At 8.25 V and over');
  expect(read(instead)).toMatch(/^Set 7\.25 V or less\. Silver in sodium nitrate starts near 4\.25 V/);
  expect(read(refusalTexts['unfit-supply'].instead)).toContain('3 to 7.25 V');
  expect(read(checkTexts['volts-knob'].fixes.number)).toContain('8.25 V and more');
  expect(read(alarmText('volts-high', defaultReadingUnits))).toMatch(/^8\.25 V or more/);
  expect(read(alarmText('stop-hot', defaultReadingUnits))).toMatch(/^43\.25 °C or more/);
  expect(read(lawTexts['eu-lead'])).toContain('less than 0.0625 % of lead');
  const shock = helpTiles.flatMap(({ lines }) => lines).find(({ id }) => id === 'shock-mains');
  expect(read(shock?.text ?? '')).toMatch(/^8\.25 V give no shock/);
});
