import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

const programs = /\.(ts|js|mjs|svelte)$/;

/**
 * A name for the state of everything that the linter reads.
 * @param {string} root
 */
export function sourcesDigest(root) {
  const hash = createHash('sha256');
  const inside = ['src', 'test'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((path) => join(folder, path)),
  );
  const files = [...inside, ...readdirSync(root)].filter((path) => programs.test(path)).sort();
  for (const path of [...files, 'package-lock.json', 'tsconfig.json'])
    hash
      .update(`${path}\0`)
      .update(readFileSync(join(root, path)))
      .update('\0');
  return hash.digest('hex').slice(0, 16);
}
