import { describe, expect, test } from 'vitest';
import { arithmeticFaults, drawingComponents } from './arithmetic.ts';
import { roomOf } from './rooms.ts';

const texts = import.meta.glob<string>('../../src/**/*.svelte', {
  query: '?raw',
  import: 'default',
  eager: true,
});

describe('components compute nothing', () => {
  const components = Object.entries(texts).map(([path, text]) => ({
    path: path.replace('../../', ''),
    text,
  }));
  test('in script, markup or attribute', () => {
    expect(components.length).toBeGreaterThan(100);
    expect(components.flatMap(arithmeticFaults)).toEqual([]);
  });
  test('and every drawing that may is there and draws', () => {
    for (const path of Object.keys(drawingComponents)) {
      const own = components.find((one) => one.path === path);
      expect(own, path).toBeDefined();
      expect(roomOf(path), path).toBe('ui');
      // renamed, its text is held to the check: one that no longer computes leaves the list
      const held = { path: path.replace('.svelte', 'Held.svelte'), text: own?.text ?? '' };
      expect(arithmeticFaults(held), path).not.toEqual([]);
    }
  });
});

describe('the arithmetic check', () => {
  const at = (text: string, path = 'src/lib/ui/job/A.svelte') => ({ path, text });
  test.each([
    '<script lang="ts">const um = depth * 1e3;</script>',
    '<script lang="ts">const left = $derived(total / 60_000);</script>',
    '<script module lang="ts">export const half = (n: number): number => n / 2;</script>',
    '<script lang="ts">let n = 3; n %= 2;</script>',
    '{Math.round(minutes)}',
    '{#if loss < 3 * step}coarse{/if}',
    '<p style:width="{share ** 2}px">a</p>',
    '<Part value={a / b} />',
    '{@const twice = 2 * n}',
    '{#snippet part(n: number)}<p>{n % 2}</p>{/snippet}',
  ])('flags %s', (text) => {
    const whole = text.includes('{@const') ? `{#if n}${text}{/if}` : text;
    const typed = text.includes('<script') ? whole : `<script lang="ts"></script>${whole}`;
    expect(arithmeticFaults(at(typed))).toHaveLength(1);
    expect(arithmeticFaults(at(typed, 'src/lib/ui/drawing/A.svelte'))).toEqual([]);
  });
  test.each([
    '<p>3 * 4 / 5</p>',
    '<style>p { width: calc(100% / 3 * 2); }</style>',
    '<script lang="ts">import { mean } from "./a/b.ts"; // a * b\n const n = mean([1, 2]) + 1;</script>',
    '<p style="width: calc(100% / 2)">{n + 1} of {all.length - 1}</p>',
  ])('passes %s', (text) => {
    expect(arithmeticFaults(at(text))).toEqual([]);
  });
});
