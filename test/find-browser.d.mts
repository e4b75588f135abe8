/** Path of a browser's executable. With `install` the system's own package manager may be asked for one. */
export function findBrowser(options?: { install?: boolean }): string;
