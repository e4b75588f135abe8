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
  return surgeryKey(a) === surgeryKey(b) && (!a.lensCylinder || a.lensMeridian === b.lensMeridian);
}

/** The same text for plans that do the same wherever the lens points, to recognise a row in a list that was calculated anew. */
export function surgeryKey({ incisionSite, incisionWidth, arcCount, arcSite, arcLength, lensCylinder }: CompletePlan): string {
  // A pair may be named by either of its two sites.
  const arcs = arcCount === 0 ? [] : [arcCount === 2 ? arcSite! % 180 : arcSite, arcLength];
  return [incisionSite, incisionWidth, arcCount, ...arcs, lensCylinder || 0].join(' ');
}
