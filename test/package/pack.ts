import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './built.js';

interface Packed {
  filename: string;
  files: { path: string; size: number }[];
}

/** What `npm pack` would publish: the names of the files, and the archive itself while `use` runs. */
export async function packed<T>(use: (pack: Packed & { archive: string }) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'astig-pack-'));
  try {
    const args = ['pack', '--json', '--ignore-scripts', `--pack-destination=${folder}`];
    const { stdout, stderr, status } = spawnSync('npm', args, { cwd: root, encoding: 'utf8', shell: process.platform === 'win32' });
    if (status !== 0) throw new Error(stderr);
    const report = JSON.parse(stdout) as Packed[] | Record<string, Packed>;
    // npm 12 names packages, npm 11 and older list them.
    const [pack] = Array.isArray(report) ? report : Object.values(report);
    return await use({ ...pack!, archive: join(folder, readdirSync(folder)[0]!) });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
