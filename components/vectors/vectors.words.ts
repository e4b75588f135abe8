import { meridian } from '../../core/numbers.js';
import type { Astigmatism, CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { astigmatismText, dioptres, meridianText } from '../internal/format.js';
import { STEP_NAME, stepName } from '../internal/words.js';
import type { Arrow, VectorSource } from './vectors.parts.js';

export const CAPTION = 'Angles are doubled here, so that meridians at right angles to each other cancel.';

export const SPREAD_CAPTION =
  'Half of all eyes like this would end in the inner ellipse, 95 of 100 in the outer one. The shaded circle is 0.50 D.';

/** Name of an arrow. */
export function arrowName(source: VectorSource, arcCount: number): string {
  if (source === 'before') return 'before';
  return source === 'residual' ? 'remaining' : stepName(source, arcCount);
}

/** Name and figures of an arrow, as short as they can be without mixing up the steep and the flattened meridian. */
export function arrowFigures({ source, meaning }: Pick<Arrow, 'source' | 'meaning'>, arcCount: number): string {
  const name = arrowName(source, arcCount);
  if (source === 'before' || source === 'residual') return `${name} ${astigmatismText(meaning)}`;
  return source === 'backSurface' ? `${name} adds ${astigmatismText(meaning)}` : `${name} ${flattens(name, meaning)}`;
}

/** One sentence on an arrow, with its figures. */
export function arrowSentence({ source, meaning }: Pick<Arrow, 'source' | 'meaning'>, arcCount: number): string {
  const name = arrowName(source, arcCount);
  switch (source) {
    case 'before':
      return `Before: ${astigmatismText(meaning)}.`;
    case 'residual':
      return `Remaining, as expected: ${astigmatismText(meaning)}.`;
    case 'backSurface':
      return `The ${name} adds ${astigmatismText(meaning)}.`;
    default:
      return `The ${name} ${flattens(name, meaning)}.`;
  }
}

/** The diagram in words. */
export function describeVectors(plan: CompletePlan, outcome: PlanOutcome, arrows: readonly Arrow[]): string {
  if (arrows.length === 0) return 'Vector diagram. There is no astigmatism, neither before nor after.';
  return ['Vector diagram, angles doubled.', ...arrows.map((arrow) => arrowSentence(arrow, plan.arcCount))].join(' ');
}

/** A vector that makes a meridian flatter points to the one across it. */
function flattens(name: string, added: Astigmatism): string {
  const along = meridianText(meridian(Math.round(added.meridian) + 90));
  return `${name === STEP_NAME.arcs ? 'flatten' : 'flattens'} ${along} by ${dioptres(added.magnitude)}`;
}
