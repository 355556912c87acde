import AxeBuilder from '@axe-core/playwright';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { atHeading, finger, keyboard, pendantBite, pendantJob, startJob, walk } from './job-walk.ts';

test.describe.configure({ timeout: 180_000 });

const sizes = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 800 } } as const;

interface Look {
  readonly viewport: { readonly width: number; readonly height: number };
  readonly colorScheme?: 'dark';
  readonly forcedColors?: 'active';
}

/** Both sizes always; for people to look at, also the dark, a reader's own colours, and the narrowest. */
const looks: Readonly<Record<string, Look>> = {
  phone: { viewport: sizes.phone },
  desk: { viewport: sizes.desk },
  ...(process.env['ETCHWRIGHT_SHOTS'] === undefined
    ? {}
    : {
        dark: { viewport: sizes.phone, colorScheme: 'dark' },
        forced: { viewport: sizes.phone, forcedColors: 'active' },
        narrow: { viewport: { width: 320, height: 640 } },
      }),
};

/** A picture of the screen for people to look at, when `npm run shots` asks for it. */
async function picture(page: Page, size: string, heading: string): Promise<void> {
  const folder = process.env['ETCHWRIGHT_SHOTS'];
  if (folder === undefined) return;
  await page.emulateMedia({ reducedMotion: 'reduce' });
  pictures += 1;
  const name = `job-${size}-${String(pictures).padStart(2, '0')}-${heading.toLowerCase().replace(/[^a-z]+/g, '-')}.png`;
  await page.screenshot({ path: join(folder, name), fullPage: true });
}
let pictures = 0;

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

for (const [name, { viewport, ...media }] of Object.entries(looks)) {
  test(`a beginner goes from metal to printed sheet on a ${name} in at most 90 acts`, async ({ page }) => {
    await page.setViewportSize(viewport);
    await page.emulateMedia(media);
    const problems: string[] = [];
    page.on('pageerror', (error) => problems.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') problems.push(message.text());
    });
    await startJob(page);
    const hand = finger(page);
    await walk(page, hand, [...pendantJob, ...pendantBite], async ({ heading }) => {
      await picture(page, name, heading);
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over, 'nothing sticks out sideways').toBeLessThanOrEqual(0);
    });
    await picture(page, name, 'What was done');
    const papers = await makePapers(page);
    expect(papers.subarray(0, 5).toString()).toBe('%PDF-');
    // starting, making and opening the papers come on top
    expect(hand.acts() + 3).toBeLessThanOrEqual(90);
    expect(problems).toEqual([]);
  });
}

test.describe('away from any network', () => {
  test.use({ serviceWorkers: 'allow' });
  test('the whole job is done', async ({ page, context }) => {
    await page.goto('/');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await startJob(page);
    await walk(page, finger(page), [...pendantJob, ...pendantBite]);
    const papers = await makePapers(page);
    expect(papers.subarray(0, 5).toString()).toBe('%PDF-');
  });
});

test('the whole job is done by keyboard alone', async ({ page }) => {
  await startJob(page);
  await walk(page, keyboard(page), [...pendantJob, ...pendantBite]);
  await atHeading(page, 'What was done');
});

test('killed and opened again at any screen a job goes on there; no screen has a serious fault, every target is large', async ({
  page,
}) => {
  await page.setViewportSize(sizes.phone);
  await startJob(page);
  const look = async ({ heading }: { heading: string }): Promise<void> => {
    await page.reload();
    await atHeading(page, heading);
    const { violations } = await new AxeBuilder({ page }).analyze();
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(grave.map(({ id, nodes }) => `${heading}: ${id} ${nodes[0]?.html ?? ''}`)).toEqual([]);
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
  };
  await walk(page, finger(page), pendantJob, look);
  await atHeading(page, 'Biting');
  const stop = page.getByRole('button', { name: 'Stop', exact: true }).last();
  expect((await stop.boundingBox())?.height).toBeGreaterThanOrEqual(96);
  await page.reload();
  await atHeading(page, 'Is the supply off?');
  await expect(page.getByText('A run was on when the page closed.')).toBeVisible();
  await walk(page, finger(page), pendantBite.slice(1), look);
  await atHeading(page, 'What was done');
});

test('a run that an older procedure began opens at the question whether the supply is off', async ({
  page,
}) => {
  await startJob(page);
  await walk(page, finger(page), pendantJob);
  await atHeading(page, 'Biting');
  await expect(page.locator('a.home')).toHaveCount(0);
  await page.goto('/404.html');
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('etchwright');
        opening.onerror = () => {
          reject(new Error('no storage'));
        };
        opening.onsuccess = () => {
          const writing = opening.result.transaction('jobs', 'readwrite');
          const jobs = writing.objectStore('jobs');
          jobs.getAll().onsuccess = ({ target }) => {
            const [kept] = (target as IDBRequest<{ text: string }[]>).result;
            const record = JSON.parse(kept?.text ?? '{}') as object;
            jobs.put({ ...record, procedureVersion: 0, snapshot: { value: 'no state of ours' } });
          };
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await page.goBack();
  await atHeading(page, 'Is the supply off?');
  await finger(page).press(/Supply off/);
  await atHeading(page, 'Deep enough?');
});

test('a look-in asks only the critical checks anew, and an edit asks its dependents', async ({ page }) => {
  await startJob(page);
  const hand = finger(page);
  await walk(page, hand, pendantJob);
  await walk(page, hand, pendantBite.slice(0, 2));
  await hand.press('Deeper, etch again');
  await atHeading(page, 'Stop and look: before power');
  await expect(page.getByText('look again: the current has been off')).toHaveCount(3);
  await expect(page.getByRole('button', { name: 'Clock on' })).toBeDisabled();
  await page.getByText('6 of 9').click();
  await page.getByRole('button', { name: /^Electrodes/ }).click();
  await hand.press('Continue');
  await hand.press('Continue');
  await hand.type('Gap between piece and plate', '40');
  await hand.press('Continue');
  await page.getByText(/of 9/).click();
  await page.getByRole('button', { name: /^Etch/ }).click();
  await expect(page.getByRole('group', { name: 'The wire from your piece runs to' })).toContainText(
    'look again',
  );
  await expect(page.getByRole('group', { name: 'Between piece and plate you see' })).toContainText(
    /Gap: 30.mm before, 40.mm now/,
  );
  await expect(page.getByRole('group', { name: /volts knob/ })).toContainText('check again');
  await expect(page.getByRole('group', { name: /volts knob/ })).toContainText('Gap');
});

test('silver in table salt is refused on a page of its own, with the way on', async ({ page }) => {
  await startJob(page);
  const hand = finger(page);
  await walk(page, hand, pendantJob.slice(0, 9));
  await hand.choose(/Table salt/);
  await hand.press('Continue');
  await atHeading(page, 'Not this way');
  await expect(page.getByText(/Use sodium nitrate/)).toBeVisible();
  await hand.press('Change the answer');
  await atHeading(page, 'Which salt?');
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

test('a returning maker starts from the last piece, told what to turn and what has changed', async ({
  page,
}) => {
  await startJob(page);
  const hand = finger(page);
  await walk(page, hand, pendantJob);
  await walk(page, hand, pendantBite.slice(0, 5));
  await atHeading(page, 'What did you get?');
  await hand.type('Depth, measured', '0.06');
  await walk(page, hand, pendantBite.slice(5));
  await atHeading(page, 'What was done');
  await expect(page.getByText(/You got 60 μm where 100 was planned. Next time: /)).toBeVisible();
  await hand.press('Start again from this');
  await atHeading(page, 'What metal is the piece?');
  await expect(page.getByText('All answers are as they were then.')).toBeVisible();
  const before = hand.acts();
  for (const { heading } of pendantJob.slice(0, 7)) {
    await atHeading(page, heading);
    await hand.press('Continue');
  }
  await atHeading(page, 'What do they hang in?');
  await hand.type('Gap between piece and plate', '40');
  await hand.press('Continue');
  for (const screen of pendantJob.slice(8)) {
    await atHeading(page, screen.heading);
    if (screen.heading === 'Set the knobs') {
      const beside = page.getByRole('region', { name: /Beside/ });
      await expect(beside).toContainText(/Gap: 30.mm before, 40.mm now/);
      await expect(beside.getByRole('row', { name: /^Amp-hours/ })).toBeVisible();
      break;
    }
    await screen.act(hand);
  }
  // the mixing hold and one changed number included: well under a minute
  expect(hand.acts() - before).toBeLessThanOrEqual(30);
});
