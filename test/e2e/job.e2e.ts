import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { jobAt } from '../fixtures/job-at.ts';
import { expectNothingSideways, graveFaults, phone } from './axe.ts';
import {
  atHeading,
  finger,
  keyboard,
  pendantBite,
  pendantJob,
  pendantPlan,
  startJob,
  walk,
} from './job-walk.ts';
import { openJob, seed } from './notebook-seed.ts';
import { gradeOf, sentencesOf } from './reading.ts';

/** A whole job goes through thirty screens, and each is looked at. */
test.describe.configure({ timeout: 240_000 });

const desk = { width: 1280, height: 800 } as const;
const wholeJob = [...pendantJob, ...pendantBite];
const lastLook = pendantJob.slice(-1);

/** What went wrong in the page itself. */
function problemsIn(page: Page): string[] {
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  return problems;
}

async function makePapers(page: Page): Promise<Buffer> {
  await atHeading(page, 'What was done');
  await page.getByRole('button', { name: 'Make the papers' }).click();
  await expect(page.getByText('The papers are ready.')).toBeVisible({ timeout: 20_000 });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the file' }).click(),
  ]);
  return readFile(await download.path());
}

/** Whatever is pressed with a wet glove is 64 px high. */
async function expectLargeTargets(page: Page, heading: string): Promise<void> {
  const small = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'main button, main a, main summary, main label:has(input[type=radio], input[type=checkbox]), main select, main input[type=text]',
      ),
    ]
      .filter((element) => element.checkVisibility())
      .map((element) => ({
        text: element.textContent.trim().slice(0, 30),
        height: element.getBoundingClientRect().height,
      }))
      .filter(({ height }) => height > 0 && height < 64),
  );
  expect(small, heading).toEqual([]);
}

/** Eighth grade or below. */
async function expectPlainWords(page: Page, heading: string): Promise<void> {
  const sentences = await sentencesOf(page);
  if (sentences.length > 0) expect(gradeOf(sentences), heading).toBeLessThanOrEqual(8);
}

async function expectSoundScreen(page: Page, heading: string): Promise<void> {
  await expectNothingSideways(page);
  expect(await graveFaults(page), heading).toEqual([]);
  await expectLargeTargets(page, heading);
  await expectPlainWords(page, heading);
}

test('a beginner goes from metal to printed sheet on a phone in at most 90 acts; every screen is sound, and the job goes on there when the page was killed', async ({
  page,
}) => {
  await page.setViewportSize(phone);
  const problems = problemsIn(page);
  await startJob(page);
  const hand = finger(page);
  let looked = 0;
  let words = 0;
  const look = async ({ heading }: { heading: string }): Promise<void> => {
    await page.reload();
    await atHeading(page, heading);
    await expectSoundScreen(page, heading);
    words += (await page.locator('main').innerText()).split(/\s+/).length;
    looked += 1;
  };
  await walk(page, hand, pendantJob, look);
  expect(looked).toBeLessThanOrEqual(18);
  expect(words).toBeLessThanOrEqual(1600);

  await atHeading(page, 'Biting');
  await expectSoundScreen(page, 'Biting');
  const stop = page.getByRole('button', { name: 'Stop', exact: true }).last();
  expect((await stop.boundingBox())?.height).toBeGreaterThanOrEqual(96);
  await expect(page.locator('a.home')).toHaveCount(0);
  await page.reload();
  await atHeading(page, 'Is the supply still on?');
  await expect(page.getByText('A run was on when the page closed.')).toBeVisible();
  await hand.press('It is on, and the bite goes on');

  await walk(page, hand, pendantBite, ({ heading }) =>
    heading === 'Biting' ? Promise.resolve() : look({ heading }),
  );
  expect(looked).toBe(wholeJob.length - 1);
  const papers = await makePapers(page);
  expect(papers.subarray(0, 5).toString()).toBe('%PDF-');
  // starting, stopping, making and opening the papers come on top
  expect(hand.acts() + 4).toBeLessThanOrEqual(90);
  expect(problems).toEqual([]);
});

test('the whole job is done by keyboard alone, on a desk', async ({ page }) => {
  await page.setViewportSize(desk);
  const problems = problemsIn(page);
  await startJob(page);
  await walk(page, keyboard(page), wholeJob);
  await atHeading(page, 'What was done');
  expect(problems).toEqual([]);
});

test.describe('away from any network', () => {
  test.use({ serviceWorkers: 'allow' });
  test('the whole job is done, on a desk', async ({ page, context }) => {
    await page.setViewportSize(desk);
    await page.goto('/');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await startJob(page);
    await walk(page, finger(page), wholeJob, () => expectNothingSideways(page));
    const papers = await makePapers(page);
    expect(papers.subarray(0, 5).toString()).toBe('%PDF-');
  });
});

test('a run that an older procedure began opens at the question whether the supply is off', async ({
  page,
}) => {
  const job = jobAt('old', 'etch.running');
  await openJob(page, { ...job, procedureVersion: 0, snapshot: { value: 'no state of ours' } });
  await atHeading(page, 'Is the supply off?');
  await finger(page).press(/Supply off/);
  await atHeading(page, 'Stop and look: before lifting');
});

test('a look-in asks only the critical checks anew, and an edit asks its dependents', async ({ page }) => {
  await openJob(page, jobAt('pendant', 'etch.hold'));
  const hand = finger(page);
  await walk(page, hand, lastLook);
  await walk(page, hand, pendantBite.slice(0, 3));
  await hand.press('Deeper, etch again');
  await atHeading(page, 'Stop and look: before power');
  await expect(page.getByText('look again: the current has been off')).toHaveCount(2);
  await expect(page.getByRole('button', { name: 'Clock on' })).toBeDisabled();
  await page.getByText('6 of 9').click();
  await page.getByRole('button', { name: /^Electrodes/ }).click();
  await hand.press('Continue');
  await hand.type('Gap between piece and plate', '40');
  await hand.press('Continue');
  // a step that changes closes the list
  await atHeading(page, 'Which bath?');
  await page.getByText(/of 9/).click();
  await page.getByRole('button', { name: /^Etch/ }).click();
  await expect(page.getByRole('group', { name: 'Last: follow the wire' })).toContainText('look again');
  await expect(page.getByRole('group', { name: 'Between piece and plate' })).toContainText(
    /Gap: 30.mm before, 40.mm now/,
  );
  await expect(page.getByRole('group', { name: /volts knob/ })).toContainText('check again');
  await expect(page.getByRole('group', { name: /volts knob/ })).toContainText('Gap');
});

test('silver in table salt is refused on a page of its own, with the way on', async ({ page }) => {
  await openJob(page, jobAt('pendant', 'electrolyte.recipe'));
  const hand = finger(page);
  await atHeading(page, 'Which bath?');
  await hand.choose(/Table salt/);
  await hand.press('Continue');
  await atHeading(page, 'Not this way');
  await expect(page.getByText(/Use sodium nitrate/)).toBeVisible();
  await hand.press('Change the answer');
  await atHeading(page, 'Which bath?');
});

test('a second tab only reads, until it takes the job over', async ({ context, page }) => {
  await startJob(page);
  const second = await context.newPage();
  await second.goto(page.url());
  await expect(second.getByText(/Another tab has this job open/)).toBeVisible();
  await expect(second.getByRole('button', { name: 'Continue' })).toBeDisabled();
  await second.getByRole('button', { name: 'Take over here' }).click();
  await expect(second.getByRole('button', { name: 'Continue' })).toBeEnabled();
  await expect(page.getByText(/Another tab has this job open/)).toBeVisible();
});

const measured = { depthUm: 60, massBeforeG: null, massAfterG: null, note: '' };
const tub = pendantPlan.findIndex(({ heading }) => heading === 'What do they hang in?');

test('a returning maker starts from the last piece, told what to turn, with all answers as they were', async ({
  page,
}) => {
  await openJob(page, { ...jobAt('first', 'sheet'), result: measured });
  const hand = finger(page);
  await atHeading(page, 'What was done');
  await expect(page.getByText(/You got 60.μm where 100 was planned. Next time: /)).toBeVisible();
  await hand.press('Start again from this');
  await atHeading(page, 'Your plan');
  await expect(page.getByText('All answers are as they were then.')).toBeVisible();
  const before = hand.acts();
  // one line changed in its place, and back to the plan
  await page.getByText('Your answers').click();
  await hand.press(/^Change: Plate of/);
  await atHeading(page, 'Which plate hangs opposite?');
  await hand.press('Continue');
  await atHeading(page, 'What do they hang in?');
  await hand.type('Gap between piece and plate', '40');
  for (const { heading } of pendantPlan.slice(tub, -1)) {
    await atHeading(page, heading);
    await hand.press('Continue');
  }
  await atHeading(page, 'Your plan');
  await hand.press('Begin at the bench');
  await atHeading(page, 'Stop and look: before mixing');
  // without the change it is one: nothing is typed, and nothing is asked twice
  expect(hand.acts() - before).toBeLessThanOrEqual(10);
});

test('and on the plan sees what has changed since', async ({ page }) => {
  await seed(page, [
    { ...jobAt('first', 'sheet'), result: measured },
    { ...jobAt('again', 'settings.plan', { 'cathode.gap': '40' }), copyOf: 'first' },
  ]);
  await page.goto('/job/?id=again&at=settings.plan');
  await atHeading(page, 'Your plan');
  const beside = page.getByRole('region', { name: /Beside/ });
  await expect(beside).toContainText(/Gap: 30.mm before, 40.mm now/);
  await expect(beside.getByRole('row', { name: /^Amp-hours/ })).toBeVisible();
});

/** Pictures of each screen of a job in each look, for people to look at: `npm run shots` names a folder. */
const folder = process.env['ETCHWRIGHT_SHOTS'];
const looks = {
  phone: { viewport: phone },
  desk: { viewport: desk },
  dark: { viewport: phone, colorScheme: 'dark' },
  forced: { viewport: phone, contextOptions: { forcedColors: 'active' } },
  narrow: { viewport: { width: 320, height: 640 } },
} as const;

if (folder !== undefined)
  for (const [name, look] of Object.entries(looks))
    test.describe(`pictures: ${name}`, () => {
      test.use({
        ...look,
        contextOptions: { reducedMotion: 'reduce', ...('contextOptions' in look ? look.contextOptions : {}) },
      });
      test('of every screen', async ({ page }) => {
        let pictures = 0;
        const picture = async ({ heading }: { heading: string }): Promise<void> => {
          pictures += 1;
          const words = heading.toLowerCase().replace(/[^a-z]+/g, '-');
          const file = `job-${name}-${String(pictures).padStart(2, '0')}-${words}.png`;
          await page.screenshot({ path: join(folder, file), fullPage: true });
          await expectNothingSideways(page);
        };
        await startJob(page);
        await walk(page, finger(page), wholeJob, picture);
        await picture({ heading: 'What was done' });
      });
    });
