import { posix } from 'node:path';

/** Where a file stands. A room may import from the rooms below it. */
type Room = 'algebra' | 'types' | 'core' | 'plan' | 'abovePlan' | 'internal' | 'element' | 'all' | 'stories' | 'test';

/** From the bottom up. */
const ORDER: Room[] = ['types', 'algebra', 'core', 'plan', 'abovePlan', 'internal', 'element', 'all', 'stories', 'test'];

/**
 * The imports of a file that point the wrong way, each as a sentence; none when all is well.
 * @param file path from the root of the repository, with forward slashes
 * @param imports module specifiers as written in the file
 */
export function wrongArrows(file: string, imports: readonly string[]): string[] {
  return imports.flatMap((specifier) => {
    const why = specifier.startsWith('.') ? wrongFile(file, specifier) : wrongPackage(file, specifier);
    return why ? [`${file} imports ${specifier}: ${why}`] : [];
  });
}

function wrongFile(file: string, specifier: string): string | undefined {
  const target = posix.join(posix.dirname(file), specifier).replace(/\.js$/, '.ts');
  const from = roomOf(file);
  const to = roomOf(target);
  if (!from) return 'the file is in no known room';
  if (!to) return 'it leads out of core/ and components/';
  if (from === 'element' && to === 'element') {
    return folderOf(file) === folderOf(target) ? undefined : 'one element imports another';
  }
  return ORDER.indexOf(to) <= ORDER.indexOf(from) ? undefined : `${from} is below ${to}`;
}

function wrongPackage(file: string, specifier: string): string | undefined {
  const name = specifier.split('/').slice(0, specifier.startsWith('@') ? 2 : 1).join('/');
  if (name === 'mathjs') return file === 'core/algebra.ts' ? undefined : 'mathjs belongs to core/algebra.ts';
  if (name === 'papaparse') return file === 'core/outcomes-csv.ts' ? undefined : 'papaparse belongs to core/outcomes-csv.ts';
  if (file.startsWith('core/')) return 'core takes nothing from outside';
  if (name === 'lit' || name.startsWith('@lit/')) return undefined;
  if (/^d3(-|$)/.test(name)) {
    if (name === 'd3') return 'only the single d3 modules are used';
    return file.startsWith('components/internal/') || file.endsWith('.parts.ts')
      ? undefined
      : 'd3 belongs to components/internal/ and to the *.parts.ts beside an element';
  }
  if (name === 'messageformat') {
    return file.startsWith('components/internal/language/') ? undefined : 'messageformat belongs to components/internal/language/';
  }
  return 'no such dependency is agreed on';
}

function roomOf(file: string): Room | undefined {
  if (file === 'core/algebra.ts') return 'algebra';
  // Types vanish when compiled, so even the lowest room may name them.
  if (file === 'core/types.ts') return 'types';
  if (file === 'core/plan.ts') return 'plan';
  if (file === 'core/options.ts' || file === 'core/numbers.ts' || file === 'core/index.ts') return 'abovePlan';
  if (file.startsWith('core/')) return 'core';
  if (file.startsWith('components/internal/')) return 'internal';
  if (/^components\/[^/]+\//.test(file)) return 'element';
  if (file === 'components/define.ts' || file === 'components/index.ts') return 'all';
  if (file.startsWith('stories/')) return 'stories';
  if (file.startsWith('test/')) return 'test';
  return undefined;
}

function folderOf(file: string): string {
  return file.split('/')[1] ?? '';
}
