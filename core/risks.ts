import { refused } from './check.js';
import type { Risk } from './types.js';

/** Every risk that can be ticked, in the order in which they are asked. */
export const RISKS: readonly Risk[] = ['collagen', 'dry-eye', 'radial-cuts', 'ectasia'];

/**
 * The risks named in a text, each once and in a fixed order, separated by spaces.
 * @throws RangeError for a name that is none.
 */
export function checkedRisks(text: unknown): string {
  if (text === null || text === undefined) return '';
  const names = typeof text === 'string' ? text.split(/\s+/).filter(Boolean) : [text];
  const unknown = names.find((name) => !(RISKS as readonly unknown[]).includes(name));
  if (unknown !== undefined) throw refused('risks', text, 'risks', { choices: RISKS.join(', ') });
  return RISKS.filter((risk) => names.includes(risk)).join(' ');
}

/** Whether a completed plan names a risk. */
export function hasRisk(risks: string, risk: Risk): boolean {
  // Most plans name none, and each is asked for several times with every movement.
  return risks !== '' && risks.split(' ').includes(risk);
}
