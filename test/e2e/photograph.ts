import type { Page } from '@playwright/test';

/** A JPEG of 24 million pixels with sixty dark bars. */
export async function largePhotograph(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(6000, 4000);
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no canvas');
    context.fillStyle = '#ddd';
    context.fillRect(0, 0, 6000, 4000);
    context.fillStyle = '#222';
    for (let n = 0; n < 60; n += 1) context.fillRect(40 + 99 * n, 200, 40, 3600);
    const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer());
    let text = '';
    for (let at = 0; at < bytes.length; at += 8192)
      text += String.fromCharCode(...bytes.subarray(at, at + 8192));
    return btoa(text);
  });
  return Buffer.from(base64, 'base64');
}
