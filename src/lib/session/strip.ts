import * as v from 'valibot';
import { canBe } from '../core/learn/rate.ts';
import type { Rate } from '../core/learn/rate.ts';

/** What a test strip told, as a draft keeps it: of which metal and salt, so that it is not taken for another. */
const kept = v.object({
  metal: v.string(),
  salt: v.string(),
  /** the plan it was bitten by, and its windows then */
  basis: v.object({ wanted: v.number(), rate: v.number() }),
  windows: v.array(
    v.object({ share: v.number(), minutes: v.number(), amps: v.number(), expected: v.number() }),
  ),
  /** min that each was really bitten; none for a strip bitten by the eye on the clock */
  bitten: v.optional(v.array(v.nullable(v.number()))),
  /** um, by window */
  depths: v.array(v.nullable(v.number())),
  rate: v.nullable(v.object({ id: v.string(), way: v.literal('strip'), rate: v.number(), off: v.number() })),
});
export type KeptStrip = v.InferOutput<typeof kept>;

/** Reads what a draft kept; null when there is nothing, or it cannot be read. */
export function stripIn(text: string): KeptStrip | null {
  if (text === '') return null;
  try {
    const parsed = v.safeParse(kept, JSON.parse(text));
    return parsed.success ? parsed.output : null;
  } catch {
    return null;
  }
}

/** The strip's rate, where it was bitten in this metal and salt. */
export function stripRateFor(text: string, metal: string, salt: string): Rate | null {
  const strip = stripIn(text);
  return strip?.rate && strip.metal === metal && strip.salt === salt && canBe(strip.rate) ? strip.rate : null;
}
