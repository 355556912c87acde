import * as v from 'valibot';
import { canBe } from '../core/learn/rate.ts';
import type { Rate } from '../core/learn/rate.ts';

/** The result of a test strip in a draft. It holds metal and salt, so that it is not used for others. */
const kept = v.object({
  metal: v.string(),
  salt: v.string(),
  /** values of the plan it was bitten by; below, the windows of that plan */
  basis: v.object({ wanted: v.number(), rate: v.number() }),
  windows: v.array(
    v.object({ share: v.number(), minutes: v.number(), amps: v.number(), expected: v.number() }),
  ),
  /** minutes that each window was bitten; absent for a strip timed only by a clock */
  bitten: v.optional(v.array(v.nullable(v.number()))),
  /** μm, by window */
  depths: v.array(v.nullable(v.number())),
  rate: v.nullable(v.object({ id: v.string(), way: v.literal('strip'), rate: v.number(), off: v.number() })),
});
export type KeptStrip = v.InferOutput<typeof kept>;

/** Reads the result in a draft; null when there is none, or it cannot be read. */
export function stripIn(text: string): KeptStrip | null {
  if (text === '') return null;
  try {
    const parsed = v.safeParse(kept, JSON.parse(text));
    return parsed.success ? parsed.output : null;
  } catch {
    return null;
  }
}

/** The strip's rate, if it was bitten in this metal and salt. */
export function stripRateFor(text: string, metal: string, salt: string): Rate | null {
  const strip = stripIn(text);
  return strip?.rate && strip.metal === metal && strip.salt === salt && canBe(strip.rate) ? strip.rate : null;
}
