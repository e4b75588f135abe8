import { mkdirSync, readFileSync, writeFileSync, existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import base from '../web-test-runner.config.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const engine = process.env.ASTIG_ENGINES ?? 'chromium';
const update = process.env.ASTIG_UPDATE_PICTURES === '1';

/** How far apart two colours of a pixel may be, 0 to 1, to count as one. */
const THRESHOLD = 0.15;

function compare({ name, data, keep }) {
  const kept = join(root, 'test/fixtures/pictures', engine, `${name}.png`);
  const bytes = Buffer.from(data, 'base64');
  if (update && keep) {
    write(kept, bytes);
    return { different: 0 };
  }
  if (!existsSync(kept)) return { different: -1 };
  const [before, now] = [PNG.sync.read(readFileSync(kept)), PNG.sync.read(bytes)];
  if (before.width !== now.width || before.height !== now.height) return { different: before.width * before.height };
  const apart = new PNG({ width: now.width, height: now.height });
  const different = pixelmatch(before.data, now.data, apart.data, now.width, now.height, { threshold: THRESHOLD });
  if (keep && different > 0) {
    write(join(root, 'test/out/pictures', engine, `${name}.png`), bytes);
    write(join(root, 'test/out/pictures', engine, `${name}-apart.png`), PNG.sync.write(apart));
  }
  return { different };
}

function write(path, bytes) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, bytes);
}

export default {
  ...base,
  rootDir: root,
  files: ['test/visual/*.test.ts'],
  plugins: [...base.plugins, { name: 'pictures', executeCommand: ({ command, payload }) => (command === 'compare-picture' ? compare(payload) : undefined) }],
};
