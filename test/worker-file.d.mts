import type { Plugin } from 'esbuild';

interface Where {
  root: string;
  common: object;
}

/** The script of the worker. */
export const WORKERS: readonly string[];

export function bundleFile(where: Where, file: string): Promise<Uint8Array>;
/** esbuild plugin: the worker of the blur, and what does without one, as files of their own. */
export function workerFile(where: Where): Plugin;
