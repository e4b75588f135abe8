/** `npm run hosts` (after `npm run build`): bundles the hosts that need it and serves all of them until it is stopped. */
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What pages may ask for. */
const SHOWN = /^\/(dist|stories\/hosts|test\/out\/hosts)\//;

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
};

/** Serves the repository on this machine alone; port 0 takes any that is free. Frames without an origin may have modules too. */
export function serve(port = 0) {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url, 'http://host');
    const file = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    const body = SHOWN.test(normalize(file)) ? await readFile(join(root, normalize(file))).catch(() => null) : null;
    response.writeHead(body ? 200 : 404, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream', 'access-control-allow-origin': '*' });
    response.end(body ?? '');
  });
  return new Promise((resolve) => server.listen(port, '127.0.0.1', () => resolve(server)));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { buildHosts } = await import('./bundled.mjs');
  await buildHosts();
  const server = await serve(8123);
  console.log(`http://localhost:${server.address().port}/stories/hosts/`);
}
