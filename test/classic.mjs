import { join } from 'node:path';
import { build } from 'esbuild';

/**
 * The one classic script, for pages without a server such as slides on a disk: browsers load no modules from there, and
 * nothing on demand. So what is lazy elsewhere is inside; what starts a worker has no address here and does without.
 */
export async function buildClassic({ root, common, plugins }) {
  const { metafile } = await build({
    ...common,
    entryPoints: [join(root, 'components/define.ts')],
    outfile: join(root, 'dist/astigmatism-elements.classic.js'),
    format: 'iife',
    define: { 'import.meta.url': 'undefined' },
    metafile: true,
    plugins,
  });
  const algebra = Object.keys(metafile.inputs).find((path) => path.includes('node_modules/mathjs/'));
  if (algebra) throw new Error('The classic script would carry mathjs along; what needs it must stay out of it.');
}
