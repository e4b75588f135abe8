import type { CompletePlan, EyePlan } from '../../core/numbers.js';

/** What choosing a suggestion changes: what is planned, and nothing of what was measured. */
export function patchOf(plan: CompletePlan): EyePlan {
  const { incisionSite, incisionWidth, incisionFlattening, arcCount, arcSite, arcLength, lensCylinder, lensMeridian } = plan;
  const patch: EyePlan = { incisionSite, incisionWidth, incisionFlattening, arcCount, arcSite, lensCylinder, lensMeridian };
  // Without arcs their length says nothing, and the one in the plan may be wanted again.
  return arcCount === 0 ? patch : { ...patch, arcLength };
}

/** Whether two plans for the same eye do the same to it. */
export function sameSurgery(a: CompletePlan, b: CompletePlan): boolean {
  return a.incisionSite === b.incisionSite && a.incisionWidth === b.incisionWidth && sameArcs(a, b) && sameLens(a, b);
}

/** A pair may be named by either of its two sites. */
function sameArcs(a: CompletePlan, b: CompletePlan): boolean {
  if (a.arcCount !== b.arcCount) return false;
  if (a.arcCount === 0) return true;
  const apart = Math.abs(a.arcSite! - b.arcSite!);
  return a.arcLength === b.arcLength && (apart === 0 || (a.arcCount === 2 && apart === 180));
}

function sameLens(a: CompletePlan, b: CompletePlan): boolean {
  const [one, other] = [a.lensCylinder ?? 0, b.lensCylinder ?? 0];
  return one === other && (one === 0 || a.lensMeridian === b.lensMeridian);
}

/** The same text for plans that do the same, to recognise a row in a list that was calculated anew. */
export function surgeryKey({ incisionSite, incisionWidth, arcCount, arcSite, arcLength, lensCylinder }: CompletePlan): string {
  return [incisionSite, incisionWidth, arcCount, ...(arcCount === 0 ? [] : [arcSite, arcLength]), lensCylinder].join(' ');
}
