import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { elements, paths, root } from './built.js';

const run = promisify(execFile);

const modules = paths.filter(({ kind }) => kind === 'module').map(({ specifier }) => specifier);

/** Imports a path in a Node of its own, where there is no document, and says what it finds. */
async function imported(specifier: string): Promise<{ names: string[]; tags: string[]; added: string[] }> {
  const script = `
    const before = new Set(Object.getOwnPropertyNames(globalThis));
    const names = Object.keys(await import(${JSON.stringify(specifier)}));
    const added = Object.getOwnPropertyNames(globalThis).filter((name) => !before.has(name));
    const tags = ${JSON.stringify(elements)}.map((name) => 'astig-' + name).filter((tag) => globalThis.customElements?.get(tag));
    console.log(JSON.stringify({ names, tags, added }));`;
  // The package imports itself by its own name, so that its exports are what is asked.
  const { stdout, stderr } = await run(process.execPath, ['--input-type=module', '--eval', script], { cwd: root });
  expect(stderr).toBe('');
  return JSON.parse(stdout) as Awaited<ReturnType<typeof imported>>;
}

describe.concurrent('every path imports in bare Node', () => {
  it('finds paths', () => {
    expect(modules).toContain('astigmatism-elements/cornea/define.js');
    expect(modules.length).toBeGreaterThan(2 * elements.length);
  });

  it.each(modules)('%s', async (specifier) => {
    const { tags } = await imported(specifier);
    const all = elements.map((name) => `astig-${name}`);
    const [, one] = /\/([^/]+)\/define\.js$/.exec(specifier) ?? [];
    const registers = one ? [`astig-${one}`] : /\/(define|astigmatism-elements)\.js$/.test(specifier) ? all : [];
    expect(tags).toEqual(registers);
  });
});

describe.concurrent('what a path gives', () => {
  it.each(elements)('astigmatism-elements/%s.js gives the class', async (name) => {
    const { names } = await imported(`astigmatism-elements/${name}.js`);
    expect(names).toContain(`Astig${name[0]!.toUpperCase()}${name.slice(1)}`);
  });

  it('the main path gives every class', async () => {
    const { names } = await imported('astigmatism-elements');
    expect(names).toEqual(expect.arrayContaining(elements.map((name) => `Astig${name[0]!.toUpperCase()}${name.slice(1)}`)));
  });

  it('the core brings neither Lit nor anything global', async () => {
    const { names, added } = await imported('astigmatism-elements/core');
    expect(names).toContain('evaluatePlan');
    expect(added).toEqual([]);
  });

  it.each(['astigmatism-elements/internal/define.js', 'astigmatism-elements/internal.js', 'astigmatism-elements/dist/core/plan.js'])(
    '%s is nobody’s to import',
    async (specifier) => {
      await expect(imported(specifier)).rejects.toThrow(/ERR_(PACKAGE_PATH_NOT_EXPORTED|MODULE_NOT_FOUND)/);
    },
  );
});
