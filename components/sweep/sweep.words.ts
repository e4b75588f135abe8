import { GOOD, siteName } from '../../core/numbers.js';
import type { CompletePlan, EyeSide, PlanOutcome } from '../../core/numbers.js';
import { dioptres, siteText, spokenSite } from '../internal/format.js';
import { EYE_NAME } from '../internal/words.js';
import { bandAt } from './sweep.parts.js';
import type { Sample, Sweep } from './sweep.parts.js';

/** What the curve is, beside the name of the eye; the longest that fits is taken. */
export const SUBTITLES = ['astigmatism expected to remain, by the site of the incision', 'expected to remain, by site of the incision', 'expected to remain', 'remaining'] as const;

export const MARKER_LABEL = 'Site of the incision';

export const HINT = 'Drag the marker, click in the plot, or use the arrow keys.';
export const HINT_WITHOUT = 'No incision is planned: click in the plot to plan one.';

/** Plans an incision where none is, without a pointer. */
export function planButtonText({ best, temporal }: Sweep): string {
  return best[0] ? `Plan it at the best site, ${siteText(best[0].site)}` : `Plan it at the temporal site, ${siteText(temporal.site)}`;
}

export const GOOD_TEXT = dioptres(GOOD);

/** A figure of the vertical axis: no more decimals than it needs. */
export function stepText(value: number): string {
  return `${Number(value.toFixed(2))}\u00a0D`;
}

/** A label in the plot: with its figure first, then in fewer and fewer words for where there is less room. */
export interface SiteLabel {
  id: 'best' | 'temporal' | 'superior';
  at: Sample;
  texts: readonly string[];
}

/** The best first: it chooses its place before the others. */
export function siteLabels({ best, temporal, superior }: Sweep): SiteLabel[] {
  const labels: SiteLabel[] = (['temporal', 'superior'] as const).map((id) => {
    const at = id === 'temporal' ? temporal : superior;
    return { id, at, texts: [`${id}: ${dioptres(at.remaining)}`, id] };
  });
  const [at] = best;
  if (at) labels.unshift({ id: 'best', at, texts: [`best ${sitesText(best)}: ${dioptres(at.remaining)}`, `best ${siteText(at.site)}`, 'best'] });
  return labels;
}

/** The present incision and what is expected to remain, the longer text first. */
export function flagTexts(degrees: number, eye: EyeSide, remaining: number): string[] {
  return [`${siteText(degrees)} ${siteName(degrees, eye)}: ${dioptres(remaining)}`, `${siteText(degrees)}: ${dioptres(remaining)}`];
}

/** `95°`, `95° or 275°` */
export function sitesText(sites: readonly Sample[]): string {
  return sites.map(({ site }) => siteText(site)).join(' or ');
}

/** What the slider says of its value. */
export function spokenMarker({ incisionSite, eye }: CompletePlan, { after }: PlanOutcome): string {
  return `incision at ${spokenSite(incisionSite ?? 0, eye)}: ${spokenDioptres(after.magnitude)} remaining`;
}

/** The picture in words. */
export function describeSweep(plan: CompletePlan, outcome: PlanOutcome, sweep: Sweep): string {
  const { best, temporal, superior, band } = sweep;
  const places = best.map(({ site }) => spokenSite(site, plan.eye)).join(', or at ');
  const parts = [
    `${EYE_NAME[plan.eye]}: astigmatism expected to remain, by the site of the incision, with all else as planned.`,
    best.length === 0
      ? `The same at every site: ${spokenDioptres(temporal.remaining)}.`
      : `Least with the incision at ${places}: ${spokenDioptres(best[0]!.remaining)}.`,
    `Temporal: ${spokenDioptres(temporal.remaining)}. Superior: ${spokenDioptres(superior.remaining)}.`,
  ];
  if (plan.incisionSite === null) return [...parts, 'No incision is planned.'].join(' ');
  parts.push(`Present ${spokenMarker(plan, outcome)}.`);
  const range = bandAt(band, plan.incisionSite);
  if (range) parts.push(`With it, half of all eyes like this would end between ${range.low.toFixed(2)} and ${spokenDioptres(range.high)}.`);
  return parts.join(' ');
}

function spokenDioptres(value: number): string {
  return `${value.toFixed(2)} dioptres`;
}
