import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const build = fileURLToPath(new URL('../../build', import.meta.url));

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.webmanifest': 'application/manifest+json',
};

export interface Host {
  /** where the app is, with its slash */
  readonly address: string;
  /** serves a service worker of other bytes from now on, as a new version would be */
  release: () => void;
  close: () => Promise<void>;
}

/** A plain static host with the app in a folder, as many makers' hosts have it. */
export async function hostUnder(folder: string): Promise<Host> {
  let released = '';
  const server = createServer((request, response) => {
    void (async () => {
      const path = new URL(request.url ?? '/', 'http://localhost').pathname;
      const inside = path.startsWith(`/${folder}/`) ? path.slice(folder.length + 1) : '/nothing';
      const file = inside.endsWith('/') ? `${inside}index.html` : inside;
      try {
        const body = await readFile(join(build, file));
        const type = types[extname(file)] ?? 'application/octet-stream';
        response.writeHead(200, { 'content-type': type, 'cache-control': 'no-cache' });
        response.end(file === '/service-worker.js' ? body.toString() + released : body);
      } catch {
        response.writeHead(404, { 'content-type': 'text/plain' });
        response.end('nothing here');
      }
    })();
  });
  await new Promise<void>((ready) => {
    server.listen(0, 'localhost', ready);
  });
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://localhost:${port}/${folder}/`,
    release: () => {
      released += '\n// a later version';
    },
    close: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => {
          done();
        });
      }),
  };
}
