import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { jobAt } from '../fixtures/job-at.ts';
import { openJob } from './notebook-seed.ts';
import { largePhotograph } from './photograph.ts';

/** To the question of the bare area, for a piece of 30 × 40 mm. */
async function toBareArea(page: Page): Promise<void> {
  await page.setViewportSize(phone);
  await openJob(page, jobAt('pendant', 'metal', { 'piece.area': 'later' }), 'metal.area');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/How much of the face/);
  await page.getByText('Measure it from a drawing or a photo').click();
}

const choose = (page: Page, name: string, mimeType: string, buffer: Buffer) =>
  page.getByLabel('Choose a picture').setInputFiles({ name, mimeType, buffer });

/** Drags a point to a place of the picture, as shares of its sides. */
async function dragTo(page: Page, name: string, x: number, y: number): Promise<void> {
  const point = page.getByRole('button', { name, exact: true });
  await point.hover();
  const frame = await page.locator('.frame').first().boundingBox();
  if (!frame) throw new Error('no frame');
  await page.mouse.down();
  await page.mouse.move(frame.x + x * frame.width, frame.y + y * frame.height, { steps: 4 });
  await page.mouse.up();
}

/** Black bar of 15 × 8 mm on a white face of 30 × 40 mm. */
const bar = Buffer.from(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 40" width="600" height="800"><rect width="30" height="40" fill="#fff"/><rect x="5" y="10" width="15" height="8"/></svg>',
);

test('measures a drawing, foresees the bite, and plans for it', async ({ page }) => {
  await toBareArea(page);
  await choose(page, 'bar.svg', 'image/svg+xml', bar);
  // 30 × 40 less 15 × 8 mm² is 10.8 cm², 90 %
  await expect(page.getByText(/Bare metal 10\.8 ± .*.cm², 90.?% of the face/)).toBeVisible();
  await expect(page.getByText('Thinnest line of resist 8 mm.')).toBeVisible();
  await expect(page.getByText('1 island of resist')).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('radio', { name: 'bare metal' }).check();
  await expect(page.getByText(/Bare metal 1\.2\d* ± .*.cm², 10.?% of the face/)).toBeVisible();
  await page.getByRole('button', { name: 'Use this area' }).click();
  await expect(page.getByText('Used.')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Bare area, one piece' })).toHaveValue('1.2');
});

test('says plainly what is no picture, and keeps the last good one', async ({ page }) => {
  await toBareArea(page);
  await choose(page, 'bar.svg', 'image/svg+xml', bar);
  await expect(page.getByText(/Bare metal 10\.8/)).toBeVisible();
  const huge = Buffer.alloc(64);
  Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex').copy(huge);
  huge.writeUInt32BE(60_000, 16);
  huge.writeUInt32BE(60_000, 20);
  const broken = Buffer.from(huge);
  broken.writeUInt32BE(300, 16);
  broken.writeUInt32BE(300, 20);
  const blank = Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 40"><rect width="30" height="40" fill="#fff"/></svg>',
  );
  const bomb = Buffer.from(
    '<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]><svg xmlns="http://www.w3.org/2000/svg"><text>&b;</text></svg>',
  );
  for (const [name, type, bytes, says] of [
    ['huge.png', 'image/png', huge, '20000'],
    ['broken.png', 'image/png', broken, 'damaged'],
    ['blank.svg', 'image/svg+xml', blank, 'one tone'],
    ['bomb.svg', 'image/svg+xml', bomb, 'grow when it is read'],
    ['notes.txt', 'text/plain', Buffer.from('no picture'), 'not a PNG, JPEG, WebP or SVG'],
  ] as const) {
    await choose(page, name, type, bytes);
    await expect(page.getByRole('status').filter({ hasText: says })).toBeVisible();
    await expect(page.getByText(/Bare metal 10\.8/)).toBeVisible();
  }
});

test('runs nothing that a drawing holds, and asks nobody', async ({ page }) => {
  const asked: string[] = [];
  page.on('request', (request) => {
    if (request.url().includes('elsewhere')) asked.push(request.url());
  });
  await toBareArea(page);
  const wicked = Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 40" onload="document.title=\'taken\'"><script>document.title="taken"</script><image href="http://elsewhere.test/a.png" width="9" height="9"/><rect width="30" height="40" fill="#fff"/><rect x="5" y="10" width="15" height="8"/></svg>',
  );
  await choose(page, 'wicked.svg', 'image/svg+xml', wicked);
  await expect(page.getByText(/Bare metal 10\.8/)).toBeVisible();
  expect(await page.title()).not.toBe('taken');
  expect(await page.locator('svg script, svg image').count()).toBe(0);
  expect(asked).toEqual([]);
});

test('lists what may be dust, one by one; what is kept stays', async ({ page }) => {
  await toBareArea(page);
  const dusty = Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 40" width="1200" height="1600"><rect width="30" height="40" fill="#fff"/><rect x="5" y="10" width="15" height="8"/><circle cx="12" cy="14" r="0.08" fill="#fff"/><circle cx="25" cy="30" r="0.09"/></svg>',
  );
  await choose(page, 'dusty.svg', 'image/svg+xml', dusty);
  await expect(page.getByText('1 island of resist')).toBeVisible();
  await page.getByText('Pinholes and specks, one by one').click();
  const speck = page.getByRole('checkbox', {
    name: /^Remove speck 2: 0\.1\d mm wide, 25 from the left, 30/,
  });
  await expect(
    page.getByRole('checkbox', { name: /^Fill pinhole 1: .* 12 from the left, 14/ }),
  ).toBeChecked();
  await speck.uncheck();
  await expect(page.getByText('2 islands of resist')).toBeVisible();
  await speck.check();
  await expect(page.getByText('1 island of resist')).toBeVisible();
});

test('measures by a bank card beside the piece, and within a traced outline', async ({ page }) => {
  await toBareArea(page);
  // a table of 100 × 150 mm: the card below, the piece of 30 × 40 mm above it
  const table = Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 150" width="1000" height="1500"><rect width="100" height="150" fill="#888"/><rect x="7.2" y="90" width="85.6" height="53.98" fill="#36c"/><rect x="30" y="20" width="30" height="40" fill="#fff"/><rect x="35" y="30" width="15" height="8"/></svg>',
  );
  await choose(page, 'table.svg', 'image/svg+xml', table);
  await page.getByRole('radio', { name: /beside a bank card/ }).check();
  await dragTo(page, 'Upper left corner of the card', 0.072, 0.6);
  await dragTo(page, 'Upper right corner of the card', 0.928, 0.6);
  await dragTo(page, 'Lower right corner of the card', 0.928, 0.95987);
  await dragTo(page, 'Lower left corner of the card', 0.072, 0.95987);
  await dragTo(page, 'Upper left corner of the piece', 0.3, 20 / 150);
  await dragTo(page, 'Upper right corner of the piece', 0.6, 20 / 150);
  await expect(
    page.getByText(/By the card the piece is (30|29\.[5-9]|30\.[1-5])\d*\smm wide; you said 30\smm/),
  ).toBeVisible();
  await expect(page.getByText(/Bare metal 10\.[6-9]\d* ±/)).toBeVisible();
  await page.getByRole('radio', { name: /traced by hand/ }).check();
  // an ellipse of 30 × 40 mm by eight points: 2√2·15·20 mm² less the bar
  await expect(page.getByText(/Bare metal 7\.[2-4]\d* ±/)).toBeVisible();
  await page.getByRole('button', { name: 'Add a point' }).click();
  await expect(page.getByRole('button', { name: 'Point 9 of the outline' })).toBeVisible();
  await expectAccessible(page);
});

test('a photo of 24 million pixels shows how far it is, and can be left', async ({ page }) => {
  test.setTimeout(120_000);
  await toBareArea(page);
  await choose(page, 'bar.svg', 'image/svg+xml', bar);
  await expect(page.getByText(/Bare metal 10\.8/)).toBeVisible();
  const photo = await largePhotograph(page);
  await choose(page, 'photo.jpg', 'image/jpeg', photo);
  await expect(page.getByRole('progressbar')).toBeVisible();
  await expect(page.getByText(/Bare metal 10\.8/)).not.toBeVisible({ timeout: 30_000 });
  const before = await page.getByText(/^Bare metal/).innerText();
  await page.getByRole('radio', { name: 'bare metal' }).check();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('progressbar')).toHaveCount(0);
  await expect(page.getByText(/^Bare metal/)).toHaveText(before);
  await expect(page.getByRole('radio', { name: 'resist', exact: true })).toBeChecked();
});

test('squares up a photo by four corners, moved by keys', async ({ page }) => {
  await toBareArea(page);
  // the piece lies in the middle, a tenth of the picture about it on every side
  const lying = Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 50 60" width="1000" height="1200"><rect width="50" height="60" fill="#777"/><rect x="10" y="10" width="30" height="40" fill="#fff"/><rect x="15" y="20" width="15" height="8"/></svg>',
  );
  await choose(page, 'lying.svg', 'image/svg+xml', lying);
  await page.getByRole('radio', { name: /what is around it/ }).check();
  const drag = (name: string, x: number, y: number) => dragTo(page, `${name} corner`, x, y);
  await drag('Upper left', 0.2, 1 / 6);
  await drag('Upper right', 0.8, 1 / 6);
  await drag('Lower right', 0.8, 5 / 6);
  await drag('Lower left', 0.2, 5 / 6);
  await expect(page.getByText(/Bare metal 10\.[6-9]\d* ±/)).toBeVisible();
  // a step by key moves it, and back
  await page.getByRole('button', { name: 'Upper left corner' }).focus();
  const line = await page.getByText(/^Bare metal/).innerText();
  for (let n = 0; n < 3; n += 1) await page.keyboard.press('Shift+ArrowRight');
  await expect(page.getByText(/^Bare metal/)).not.toHaveText(line);
  for (let n = 0; n < 3; n += 1) await page.keyboard.press('Shift+ArrowLeft');
  await expect(page.getByText(/^Bare metal/)).toHaveText(line);
  // crosswise: said, and the last good state stays
  await drag('Upper left', 0.95, 0.95);
  await expect(page.getByText('The corners cross.')).toBeVisible();
  await expect(page.getByText(/Bare metal 10\.[78]/)).toBeVisible();
});

test('prints the stencil', async ({ page }) => {
  await toBareArea(page);
  await page.getByRole('button', { name: 'Seed head' }).click();
  await expect(page.getByText(/Bare metal/)).toBeVisible();
  await page.getByText('Print it as a stencil').click();
  await page.getByRole('button', { name: /Make the papers/ }).click();
  await expect(page.getByRole('img', { name: 'Stencil, page 1' })).toBeVisible({ timeout: 30_000 });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: /save/i }).click(),
  ]);
  await download.saveAs('test-results/stencil.pdf');
});
