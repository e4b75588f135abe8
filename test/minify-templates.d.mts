import type { Plugin } from 'esbuild';

export function minifyTemplates(options: { filter: RegExp }): Plugin;
export function shortenTemplates(source: string, path?: string): Promise<string>;
