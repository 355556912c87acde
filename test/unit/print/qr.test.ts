import decodeQR from 'qr/decode.js';
import { describe, expect, test } from 'vitest';
import { qrCode } from '../../../src/lib/print/drawing/qr.ts';
import { readPixels, spoiled } from '../../fixtures/qr-pixels.ts';

const bare = '1BCk5SBC9K4wIAGTlJOAg5wZgZYCWCSCAAAh8HNQggA';
const texts = [bare, `https://bench.example/makers/tools/#start=${bare}`, `1${'Ab3-_xYz'.repeat(20)}`];

describe.each(texts)('%s', (text) => {
  test.each([26, 29])('is read back from %i mm at 300 dpi', (side) => {
    expect(decodeQR(readPixels(qrCode(text, side).svg, side, 300))).toBe(text);
  });

  test.each([26, 29])('is read back with a tenth of it blotted, %i mm', (side) => {
    const { svg, modules } = qrCode(text, side);
    for (const ink of [0, 255]) {
      const image = spoiled(readPixels(svg, side, 300), { modules, share: 0.1, ink });
      expect(decodeQR(image)).toBe(text);
    }
  });

  test('has modules of four printer dots and more', () => {
    const { modules, level } = qrCode(text, 26);
    // four dots a module at 300 dpi: DENSO's guide, by way of a secondary copy
    expect(26 / (modules + 8)).toBeGreaterThanOrEqual((4 * 25.4) / 300);
    expect(['medium', 'quartile']).toContain(level);
  });
});
