import fc from 'fast-check';
import { LIMITS } from '../../core/index.js';
import type { EyePlan } from '../../core/index.js';
import { inkBox } from './ink.js';

/** How far two boxes may touch before it counts, CSS px: less than the finest stroke of a letter. */
const TOUCH = 0.5;

const within = (field: keyof typeof LIMITS): fc.Arbitrary<number> => fc.integer({ min: LIMITS[field].min * 10, max: LIMITS[field].max * 10 }).map((n) => n / 10);

/** Plans of every kind, within the limits. */
export const anyPlan: fc.Arbitrary<EyePlan> = fc.record({
  eye: fc.constantFrom('right' as const, 'left' as const),
  flatK: fc.integer({ min: 40, max: 43 }),
  steepK: fc.integer({ min: 4300, max: 4800 }).map((n) => n / 100),
  steepMeridian: fc.integer({ min: 1, max: 180 }),
  backSurface: fc.constantFrom('omitted' as const, 'typical' as const, '0.5@90' as const),
  incisionSite: fc.option(fc.integer({ min: 0, max: 359 })),
  incisionWidth: within('incisionWidth'),
  arcSite: fc.integer({ min: 0, max: 359 }),
  arcLength: within('arcLength'),
  arcCount: fc.constantFrom(0 as const, 1 as const, 2 as const),
  lensCylinder: fc.option(fc.integer({ min: 5, max: 40 }).map((n) => n / 10)),
  lensMeridian: fc.integer({ min: 1, max: 180 }),
});

/** What is wrong with the labels of a drawing: pairs that overlap, and labels that leave the drawing. */
export function faults(drawing: SVGSVGElement): string[] {
  const edge = drawing.getBoundingClientRect();
  const labels = [...drawing.querySelectorAll('text')].map((text) => ({ text: text.textContent, box: inkBox(text) }));
  const found: string[] = [];
  labels.forEach(({ text, box }, index) => {
    if (box.left < edge.left - TOUCH || box.right > edge.right + TOUCH || box.top < edge.top - TOUCH || box.bottom > edge.bottom + TOUCH) {
      found.push(`“${text}” is clipped`);
    }
    for (const other of labels.slice(index + 1)) {
      const apart =
        box.right <= other.box.left + TOUCH || other.box.right <= box.left + TOUCH || box.bottom <= other.box.top + TOUCH || other.box.bottom <= box.top + TOUCH;
      if (!apart) found.push(`“${text}” (${place(box)}) and “${other.text}” (${place(other.box)}) overlap`);
    }
  });
  return found;
}

function place({ left, right, top, bottom }: DOMRect): string {
  return `${[left, right].map(Math.round).join('–')}, ${[top, bottom].map(Math.round).join('–')}`;
}
