import type { BuildOptions } from 'esbuild';

export interface BundledFile {
  /** From the folder of the main file. */
  path: string;
  contents: string | Uint8Array;
}

export const ALL: { name: string; source: string };
export function settings(root: string): BuildOptions;
export function bundleOneFile(root: string, main: { name: string; source: string }): Promise<BundledFile[]>;
export function sizeOf(files: readonly BundledFile[]): { minified: number; gzipped: number; later: number };
