import { worn } from '$lib/core/facts/wear.ts';
import type { ThingId } from '$lib/core/facts/wear.ts';

export const thingIds = Object.keys(worn) as readonly ThingId[];

export const isThing = (id: string): id is ThingId => Object.hasOwn(worn, id);
