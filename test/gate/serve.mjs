/** Serves the built app for as long as somebody looks at it, beside whatever is being served already. */
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { join } from 'node:path';

/**
 * The wanted port if it is free, else any free one, so that a running preview is no obstacle.
 * @param {number} [wanted]
 * @returns {Promise<number>}
 */
export function freePort(wanted = 0) {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', (error) => {
      if (wanted === 0) reject(error);
      else resolve(freePort());
    });
    server.listen(wanted, 'localhost', () => {
      const address = server.address();
      const port = address && typeof address === 'object' ? address.port : wanted;
      server.close(() => {
        resolve(port);
      });
    });
  });
}

/**
 * @param {string} root of a tree that has been built
 * @returns {Promise<{ address: string, stop: () => void }>}
 */
export async function serve(root) {
  const port = String(await freePort());
  const server = spawn(
    process.execPath,
    [join(root, 'node_modules/vite/bin/vite.js'), 'preview', '--port', port],
    { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] },
  );
  return new Promise((resolve, reject) => {
    server.stdout.once('data', () => {
      resolve({ address: `http://localhost:${port}/`, stop: () => server.kill() });
    });
    server.once('exit', () => {
      reject(new Error(`The preview did not start on port ${port}`));
    });
  });
}
