import type { SuggestedPlan, Surgery } from './options-types.js';

type Option = Omit<SuggestedPlan, 'reason'>;

/** What a plan gains over the nearest listed plan with less surgery, as "one arc more gains 4 in 100". */
export function reasonFor(option: Option, all: readonly Option[]): string {
  const less = all.filter((other) => other !== option && lessThan(other, option));
  const simpler = less.filter((other) => other.ofHundred < option.ofHundred).sort((a, b) => b.ofHundred - a.ofHundred)[0];
  const best = all[0] === option ? 'the best chance' : '';
  if (!simpler) return [best, all.every((other) => other === option || lessThan(option, other)) ? 'the least surgery' : best ? '' : 'another way'].filter(Boolean).join(', with ');
  const gain = option.ofHundred - simpler.ofHundred;
  return [best, `${difference(simpler, option)} gains ${gain} in 100`].filter(Boolean).join('; ');
}

/** No more arcs, no longer ones together, no lens where there was none, no wider entry. */
export function noMore(a: Surgery, b: Surgery): boolean {
  return a.arcs <= b.arcs && a.arcDegrees <= b.arcDegrees && !(a.lens > 0 && b.lens === 0) && a.width <= b.width;
}

/** Whether the first plan does no more of anything and less of something. */
function lessThan(a: Option, b: Option): boolean {
  return noMore(a.surgery, b.surgery) && !noMore(b.surgery, a.surgery);
}

/** What the second plan does more than the first. */
function difference(a: Option, b: Option): string {
  const parts: string[] = [];
  const arcs = b.surgery.arcs - a.surgery.arcs;
  if (arcs > 0) parts.push(a.surgery.arcs === 0 ? (arcs === 1 ? 'one arc' : 'a pair of arcs') : 'one arc more');
  else if (b.surgery.arcDegrees > a.surgery.arcDegrees) parts.push('a longer arc');
  if (b.surgery.lens > 0 && a.surgery.lens === 0) parts.push('a toric lens');
  if (b.surgery.width > a.surgery.width) parts.push('a wider entry');
  return parts.join(' and ');
}
