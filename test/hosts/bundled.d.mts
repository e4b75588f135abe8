export const OUT: string;
export function buildHosts(): Promise<void>;
