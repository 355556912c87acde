/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
import { base, build, files, prerendered, version } from '$service-worker';

/*
 * At most two megabytes are stored for offline use, ten seconds on a slow connection. The fifty pages on what
 * to wear would be a tenth of that, so one empty page serves for all of them, and the app draws the one that
 * the address names. The drawback: without network and without scripts, a reload of such a page shows
 * nothing.
 */

/**
 * Everything is loaded when a version is installed, so that any page opens without a network. A new version
 * then waits until the last page is closed, or until the maker starts it while no run is on.
 */
const worker = self as unknown as ServiceWorkerGlobalScope;

// Several apps may share one host, each in its own folder.
const prefix = `etchwright:${base}:`;
const cacheName = `${prefix}${version}`;

/** Pages whose data is in a separate file, which is loaded when another page links to them. */
const pagesWithData = [`${base}/`, `${base}/known/sources/`];
const pages = new Set(prerendered);
/**
 * The empty page for addresses that are not stored. It is as many folders deep as they are, so that relative
 * addresses work.
 */
const emptyPage = `${base}/wear/drawn/`;
/** Whether a page is one of the many that the empty page stands for. */
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
      // files of the build have their content in their name; all others must be loaded again from the host
      const fresh = new Set(build);
      await cache.addAll(
        wanted.map((path) => new Request(path, { cache: fresh.has(path) ? 'default' : 'reload' })),
      );
      // hosts send this page with an error status, which `addAll` would reject
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
      // let this version also serve the page that installed it
      await worker.clients.claim();
    })(),
  );
});

worker.addEventListener('message', ({ data }) => {
  if (data === 'SKIP_WAITING') void worker.skipWaiting();
});

const fromCache = async (path: string): Promise<Response | undefined> =>
  (await caches.open(cacheName)).match(path);

/** Serves a page by its path, without its query. A missing slash at the end is added. */
async function page(request: Request, url: URL): Promise<Response> {
  const path = url.pathname.replace(/index\.html$/, '');
  if (pages.has(path)) {
    const found = await fromCache(isDrawn(path) ? emptyPage : path);
    return found ?? fetch(request);
  }
  // without the slash, relative addresses of the page would be wrong
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
  // in development there is no build, so nothing is stored
  if (request.method !== 'GET' || url.origin !== location.origin || build.length === 0) return;
  if (request.mode === 'navigate') event.respondWith(page(request, url));
  else if (kept.has(url.pathname)) {
    event.respondWith(fromCache(url.pathname).then((found) => found ?? fetch(request)));
  }
});
