import { execFileSync } from 'node:child_process';
import { build } from 'esbuild';
import { root } from './built.js';

/** The HTML that a server makes of a Lit template, in a Node of its own and without any preparation but the imports. */
export function served(template: string, values: Record<string, unknown> = {}): string {
  const script = `
    import { html } from 'lit';
    import { render } from '@lit-labs/ssr';
    import { collectResult } from '@lit-labs/ssr/lib/render-result.js';
    import 'astigmatism-elements/define.js';
    const { ${Object.keys(values).join(', ')} } = ${JSON.stringify(values)};
    process.stdout.write(await collectResult(render(html\`${template}\`)));`;
  return execFileSync(process.execPath, ['--input-type=module', '--eval', script], { cwd: root, encoding: 'utf8' });
}

/** A script as a host's bundler makes it, with one copy of Lit. */
export async function bundled(contents: string): Promise<string> {
  const { outputFiles } = await build({ stdin: { contents, resolveDir: root }, bundle: true, format: 'esm', write: false, logLevel: 'warning' });
  return outputFiles[0]!.text;
}

/** What takes over what a server has drawn; it has to come before Lit. */
export const HYDRATION = `import '@lit-labs/ssr-client/lit-element-hydrate-support.js';`;
