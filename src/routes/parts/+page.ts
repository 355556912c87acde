import { error } from '@sveltejs/kit';
import type { Component } from 'svelte';
import { dev } from '$app/environment';

// A page for developers only: a build neither serves it nor ships any of it.
export const prerender = false;
export const ssr = false;

export async function load(): Promise<{ Parts: Component }> {
  if (!dev) error(404, 'Not found');
  return { Parts: (await import('$lib/ui/parts/Parts.svelte')).default };
}
