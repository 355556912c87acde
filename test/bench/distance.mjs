/** Times the distance transform: a megapixel and twelve, on one core. */
import { performance } from 'node:perf_hooks';
import { bundled } from './bundled.mjs';

const cases = [
  { side: [1000, 1000], ms: 60 },
  { side: [4000, 3000], ms: 800 },
];

/** @returns {Promise<number>} how many are over their bounds */
export async function distance() {
  const { squaredDistances } = /** @type {typeof import('../../src/lib/core/mask/distance.ts')} */ (
    await bundled('src/lib/core/mask/distance.ts')
  );
  let over = 0;
  for (const { side, ms } of cases) {
    const [width = 0, height = 0] = side;
    // rings, some pixels wide: lines as a drawing has them
    const inside = Uint8Array.from({ length: width * height }, (_, n) => {
      const away = Math.hypot((n % width) - width / 2, Math.floor(n / width) - height / 2);
      return Number(away % 90 < 60);
    });
    const times = [1, 2, 3].map(() => {
      const start = performance.now();
      squaredDistances(inside, width, height);
      return performance.now() - start;
    });
    const took = Math.min(...times);
    if (took > ms) over += 1;
    console.log(`distances, ${(width * height) / 1e6} MP      ${took.toFixed(0)} ms, bound ${ms} ms`);
  }
  return over;
}
