import { error } from '@sveltejs/kit';
import type { Component } from 'svelte';
import { dev } from '$app/environment';

// for whoever works on the app: in a build the page is not there, and nothing of it is shipped
export const prerender = false;
export const ssr = false;

export async function load(): Promise<{ Parts: Component }> {
  if (!dev) error(404, 'Not found');
  return { Parts: (await import('$lib/ui/parts/Parts.svelte')).default };
}
