/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
import { base, build, files, prerendered, version } from '$service-worker';

/*
 * Two megabytes at most are kept for offline: ten seconds of a slow line. Fifty pages of what to wear were a
 * tenth of that, so one empty page stands for all and the app draws what the address names. Price: a reload
 * without network and without script shows nothing there.
 */

/**
 * Everything is fetched when a version is installed, so that any page opens with the network off. A new
 * version waits: it is let in by the last page's closing, or by the maker's tap when no run is on.
 */
const worker = self as unknown as ServiceWorkerGlobalScope;

// Several apps may share one host, each under its own folder.
const prefix = `etchwright:${base}:`;
const cacheName = `${prefix}${version}`;

/** Pages whose data is a file of its own, asked for when the page is opened from another. */
const pagesWithData = [`${base}/`, `${base}/known/sources/`];
const pages = new Set(prerendered);
/** What the app draws into for an address that is not kept; it lies as deep as they do. */
const emptyPage = `${base}/wear/drawn/`;
/** There are many, all of one kind: their script is kept once and draws any of them. */
const isDrawn = (path: string): boolean => path.startsWith(`${base}/wear/`) && path !== `${base}/wear/`;
const keptPages = prerendered.filter((path) => !isDrawn(path) || path === emptyPage);
const wanted = [
  ...new Set([...build, ...files, ...keptPages, ...pagesWithData.map((page) => `${page}__data.json`)]),
];
const kept = new Set(wanted);
const unknownPage = `${base}/404.html`;

worker.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      const cache = await caches.open(cacheName);
      // names of chunks carry their content; all else must come fresh from the host
      const fresh = new Set(build);
      await cache.addAll(
        wanted.map((path) => new Request(path, { cache: fresh.has(path) ? 'default' : 'reload' })),
      );
      // hosts serve it with a status of their own; what matters is the page
      const unknown = await fetch(unknownPage, { cache: 'reload' }).catch(() => null);
      if (unknown) await cache.put(unknownPage, unknown);
    })(),
  );
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      const old = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== cacheName);
      await Promise.all(old.map((name) => caches.delete(name)));
      // the page that installed the first version is served at once
      await worker.clients.claim();
    })(),
  );
});

worker.addEventListener('message', ({ data }) => {
  if (data === 'SKIP_WAITING') void worker.skipWaiting();
});

const fromCache = async (path: string): Promise<Response | undefined> =>
  (await caches.open(cacheName)).match(path);

/** A page by its path: with its slash, without its query. */
async function page(request: Request, url: URL): Promise<Response> {
  const path = url.pathname.replace(/index\.html$/, '');
  if (pages.has(path)) {
    const found = await fromCache(isDrawn(path) ? emptyPage : path);
    return found ?? fetch(request);
  }
  // without the slash the page's relative addresses would point elsewhere
  if (pages.has(`${path}/`)) return Response.redirect(`${path}/${url.search}`, 307);
  try {
    return await fetch(request);
  } catch (error) {
    const unknown = await fromCache(unknownPage);
    if (unknown) return unknown;
    throw error;
  }
}

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  // in development nothing is built, and nothing is kept
  if (request.method !== 'GET' || url.origin !== location.origin || build.length === 0) return;
  if (request.mode === 'navigate') event.respondWith(page(request, url));
  else if (kept.has(url.pathname)) {
    event.respondWith(fromCache(url.pathname).then((found) => found ?? fetch(request)));
  }
});
