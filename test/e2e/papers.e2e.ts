import { expect, test } from '@playwright/test';
import { solveCell } from '../../src/lib/core/cell/solved-field.ts';
import { planJob } from '../../src/lib/core/plan/plan-job.ts';
import type { Plan } from '../../src/lib/core/plan/plan.ts';
import { defaultReadingUnits } from '../../src/lib/core/job/reading-units.ts';
import type { FigureId } from '../../src/lib/core/plan/outcome.ts';
import { range } from '../../src/lib/words/en/locale.ts';
import { readJobCode, jobCode } from '../../src/lib/link/job-code.ts';
import { shortCode } from '../../src/lib/link/short-code.ts';
import { draftOf } from '../../src/lib/session/jobs-from-plan.ts';
import { figureName } from '../../src/lib/words/en/figures.ts';
import { printPlan } from '../../src/lib/words/en/printed-plan.ts';
import { figureParts } from '../../src/lib/words/en/render.ts';
import { unitSymbol } from '../../src/lib/words/en/units.ts';
import { jobAt } from '../fixtures/job-at.ts';
import { cuff, jobOf, pendant, tokens } from '../fixtures/jobs.ts';
import { readQr } from '../fixtures/read-qr.ts';
import { readPages, squeeze } from '../unit/print/printed.ts';
import { expectAccessible, phone } from './axe.ts';
import { answerHold } from './demo-walk.ts';
import { atHeading } from './job-walk.ts';
import { openJob, seed } from './notebook-seed.ts';
import { idIn, kept, makePapers } from './paper-panel.ts';

test.use({ viewport: phone, locale: 'en-GB' });

/** Figures as they are printed: the last bit of a browser's logarithm may differ from Node's. */
const shown = ({ figures }: Plan): object =>
  Object.fromEntries(
    Object.entries(figures).map(([id, figure]) => [
      id,
      `${figureParts(figure, defaultReadingUnits).number} ${figure.unit}, ${range(figure.low, figure.high)}`,
    ]),
  );

const demos = [
  ['Seed-head pendant', pendant],
  ['Wave-band cuff', cuff],
  ['Evening-class tokens', tokens],
] as const;

test('an example starts as the job that it shows', async ({ page }) => {
  for (const [title, file] of demos) {
    await page.goto('/');
    await page.getByText('Three jobs, planned').click();
    const plate = page.getByRole('region', { name: title });
    await plate.getByRole('button', { name: 'Start from this' }).click();
    await expect(page).toHaveURL(/\/job\/\?id=/);
    const { draft } = await kept(page, idIn(page));
    expect({ ...draft, paper: '' }).toEqual({ ...draftOf(jobOf(file())), paper: '' });
  }
});

for (const [title, file] of demos) {
  test(`${title}: papers that say what the plan says, and lead back to it`, async ({ page }) => {
    const draft = draftOf(jobOf(file()));
    await seed(page, [
      jobAt('mixed', 'electrolyte.mixing', draft),
      jobAt('set', 'settings.plan', draft),
      jobAt('ready', 'etch.hold', draft),
    ]);
    const boxes = page.getByRole('checkbox', { includeHidden: true });
    const offered = async (): Promise<string[]> => {
      await expect(boxes.first()).toBeAttached();
      return boxes.evaluateAll((all) =>
        all.map((box) => {
          const label = box.closest('label')?.cloneNode(true) as HTMLElement | undefined;
          label?.querySelector('small')?.remove();
          return label?.textContent.trim() ?? '';
        }),
      );
    };
    await page.goto('/job/?id=mixed&at=electrolyte.wait');
    await atHeading(page, 'Let it stand');
    await page.getByText('Print it', { exact: true }).click();
    expect(await offered()).toEqual(['Bath label', 'First aid', 'What to wear']);
    await page.goto('/job/?id=set&at=settings.plan');
    await atHeading(page, 'Your plan');
    await page.getByText('Print it', { exact: true }).click();
    expect(await offered()).toEqual(['List', 'Job sheet', 'Bench card', 'Bath label', 'What to wear']);

    // the plan as this browser made it when the clock went on
    await page.goto('/job/?id=ready');
    await atHeading(page, 'Stop and look: before power');
    await answerHold(page);
    await page.getByRole('button', { name: /^Clock on/ }).click();
    await atHeading(page, 'Biting');
    const { planAtStart: plan } = await kept(page, 'ready');
    if (!plan) throw new Error('no plan was kept at the start');
    // the job that was typed is the one that was planned, and the figures are what core says of it
    const { piece, tub, bath } = jobOf(file());
    for (const part of [
      [plan.job.piece.openArea, piece.openArea],
      [plan.job.piece.depth, piece.depth],
      [plan.job.bath.strength, bath.strength],
    ] as const) {
      expect(part[0] ?? 0).toBeCloseTo(part[1] ?? 0, 9);
    }
    expect(plan.job.tub.kind).toBe(tub.kind);
    expect(shown(planJob(plan.job, solveCell))).toEqual(shown(plan));

    await seed(page, [{ ...jobAt('done', 'sheet', draft), planAtStart: plan }]);
    await page.goto('/job/?id=done');
    await atHeading(page, 'What was done');
    expect(await offered()).toEqual([
      'Job sheet',
      'Bench card',
      'Bath label',
      'First aid',
      'What to wear',
      'List',
    ]);
    const { bytes } = await makePapers(page);
    const pages = await readPages(bytes);
    const [first] = pages;
    expect([first?.width, first?.height].map((side) => Math.round(side ?? 0))).toEqual(
      draft.paper === 'Letter' ? [612, 792] : [595, 842],
    );
    const all = pages.map(({ squeezed }) => squeezed).join('');
    for (const [id, figure] of Object.entries(plan.figures)) {
      const limits = figure.low === figure.high ? '' : range(figure.low, figure.high);
      const name = figureName(id as FigureId, defaultReadingUnits);
      const { number, unit } = figureParts(figure, defaultReadingUnits);
      expect(unit).toBe(unitSymbol(figure.unit));
      expect(all).toContain(squeeze(`${name}${number}${unit}${limits}`));
    }
    for (const { text } of printPlan(plan).cautions) expect(all).toContain(squeeze(text));
    for (const text of ['NOT FOOD — DO NOT DRINK', 'Piece on +. Plate on −.', 'Help now', 'What to wear']) {
      expect(all).toContain(squeeze(text));
    }
    expect(pages.filter(({ squeezed }) => squeezed.includes('100mm'))).toHaveLength(4);

    // both QR codes carry the settings, whole and with a tenth of them blotted
    const texts: string[] = [];
    for (const number of [1, pages.length - 3]) {
      texts.push(await readQr(bytes, number), await readQr(bytes, number, 0.1));
    }
    expect(new Set(texts).size).toBe(1);
    const text = texts[0] ?? '';
    const read = readJobCode(text);
    if ('fault' in read) throw new Error(read.fault);
    expect(jobCode({ ...plan.job, supply: read.job.supply })).toBe(text);
    expect(all).toContain(shortCode(text));

    // the code finds the job here; the QR's text starts the same on a device that has never seen it
    await page.goto('/');
    await page.getByText('From a sheet: type its code').click();
    await page.getByLabel('Code on the sheet').fill(shortCode(text).toLowerCase().replace('-', ' '));
    await page.getByRole('button', { name: 'Look it up' }).click();
    await expect(page.getByRole('heading', { name: 'Start from this sheet' })).toBeFocused();
    await expect(page.getByText(`It is in this notebook as “${title}”.`)).toBeVisible();
    await expectAccessible(page);
  });
}

const handed = jobCode(jobOf(pendant()));

test('an address with settings starts the same job elsewhere, with nothing looked at', async ({ page }) => {
  await page.goto(`/#start=${handed}`);
  await expect(page.getByRole('heading', { name: 'Start from this sheet' })).toBeFocused();
  await expect(page.getByText('Sterling silver, 30 mm × 40 mm, 1 mm thick')).toBeVisible();
  await expect(page.getByText('No check comes with it')).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Start from this' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your workshop');
  await page.getByRole('button', { name: 'Continue' }).click();
  await expect(page.getByRole('radio', { name: /Sterling/ })).toBeChecked();
  const { draft, events, snapshot } = await kept(page, idIn(page));
  expect(draft['piece.width']).toBe('30');
  expect(draft['title']).toBe('From a sheet');
  expect(events.filter(({ type }) => type !== 'plan.changed' && type !== 'job.restored')).toEqual([]);
  expect(snapshot?.context?.answers ?? {}).toEqual({});
});

test('what is no settings is said plainly, in the address and in the field, and starts nothing', async ({
  page,
}) => {
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(error.message));
  await page.goto(`/#start=${handed.slice(0, -3)}`);
  await expect(page.getByRole('alert')).toContainText('damaged on the way');
  await page.goto('/#start=%3Cscript%3E');
  await expect(page.getByRole('alert')).toContainText('not an Etchwright job');
  await page.goto(`/#start=2${handed.slice(1)}`);
  await expect(page.getByRole('alert')).toContainText('later version');
  await page.goto('/#start=');
  await expect(page.getByRole('alert')).toContainText('not an Etchwright job');

  await page.goto('/');
  await page.getByText('From a sheet: type its code').click();
  const field = page.getByLabel('Code on the sheet');
  for (const [typed, said] of [
    ['AAAA-AAAB', 'a letter is wrong or missing'],
    [shortCode(handed), 'not in this notebook'],
    ['good morning', 'not an Etchwright job'],
  ] as const) {
    await field.fill(typed);
    await page.getByRole('button', { name: 'Look it up' }).click();
    await expect(page.locator('#sheet-code-fault')).toContainText(said);
  }
  await expect(page.getByText('No job in this browser yet.')).toBeVisible();
  await expectAccessible(page);
  // and the bare text of a QR code made without a secure address
  await field.fill(handed);
  await page.getByRole('button', { name: 'Look it up' }).click();
  await page.getByRole('button', { name: 'Back' }).click();
  await expect(page.getByText('No job in this browser yet.')).toBeVisible();
  expect(problems).toEqual([]);
});

test('papers are shown before they are saved, on the paper chosen', async ({ page }) => {
  await openJob(page, jobAt('done', 'sheet', draftOf(jobOf(pendant()))));
  await makePapers(page);
  await expect(page.getByRole('img', { name: 'Seed-head pendant, page 1', exact: true })).toBeVisible();
  await expect(page.getByRole('img', { name: /, page 11$/ })).toBeAttached({ timeout: 30_000 });
  const drawn = await page.getByRole('img', { name: /, page 1$/ }).evaluate((canvas: HTMLCanvasElement) => {
    const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
    let dark = 0;
    for (let at = 0; at < data.length; at += 4) if ((data[at] ?? 255) < 128) dark += 1;
    return dark / (canvas.width * canvas.height);
  });
  expect(drawn).toBeGreaterThan(0.01);
  await expectAccessible(page);

  await page.getByRole('radio', { name: 'US Letter' }).check();
  const again = await makePapers(page);
  expect((await readPages(again.bytes))[0]?.width).toBeCloseTo(612, 0);
  await page.getByRole('radio', { name: 'A4' }).check();
  const third = await makePapers(page);
  expect((await readPages(third.bytes))[0]?.width).toBeCloseTo(595, 0);
});

test('the paper is the region’s until it is chosen, and the choice is kept', async ({ browser }) => {
  const context = await browser.newContext({ locale: 'en-US' });
  const page = await context.newPage();
  await page.goto('/');
  await page.getByRole('button', { name: 'Start a job' }).click();
  await expect(page).toHaveURL(/\/job\/\?id=/);
  expect((await kept(page, idIn(page))).draft['paper']).toBe('Letter');
  await context.close();
});
