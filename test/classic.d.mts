/** Builds the one classic script, and the scripts beside it that it loads on demand. Paths are from `root`. */
export function buildClassic(options: {
  root: string;
  common: object;
  plugins: object[];
  entry: string;
  heavy: string;
  outfile: string;
}): Promise<string[]>;
