import { describe, expect, test } from 'vitest';
import { SCHEMATIC_EYES, eyeReferences, lineFoci, pencilThrough, trace, type EyeSystem, type SchematicEye, type Surface } from '../../core/eye.js';
import { entries } from './eye-readers.js';

const eyes = Object.entries(SCHEMATIC_EYES) as [keyof typeof SCHEMATIC_EYES, SchematicEye][];

/** The published entry with whose constants an eye has to agree. */
const ENTRY: Record<keyof typeof SCHEMATIC_EYES, string> = {
  gullstrand: 'eye-gullstrand-exact',
  leGrand: 'eye-le-grand-relaxed',
  leGrandAccommodated: 'eye-le-grand-accommodated',
  gullstrandEmsley: 'eye-gullstrand-emsley-relaxed',
  gullstrandEmsleyAccommodated: 'eye-gullstrand-emsley-acc',
  emsleyReduced: 'eye-emsley-reduced',
  bennettRabbetts: 'eye-bennett-rabbetts-0D',
  bennettRabbetts2: 'eye-bennett-rabbetts-2.5D',
  bennettRabbetts5: 'eye-bennett-rabbetts-5D',
  bennettRabbetts7: 'eye-bennett-rabbetts-7.5D',
  bennettRabbetts10: 'eye-bennett-rabbetts-10D',
  navarro: 'eye-navarro',
  liouBrennan: 'eye-liou-brennan',
};

describe.each(eyes)('%s', (name, eye) => {
  test('has the constants of the published entry', () => {
    const { surfaces, indices } = entries.find(({ id }) => id === ENTRY[name])!.inputs;
    expect(eye.surfaces).toHaveLength(surfaces.length);
    eye.surfaces.forEach(({ radius, indexAfter, gapAfter, gradient }, i) => {
      const last = i === eye.surfaces.length - 1;
      expect(radius).toBeCloseTo(surfaces[i].radiusMm ?? Infinity, 8);
      expect(indexAfter).toBeCloseTo(indices[i + 1], 8);
      if (!last) expect(gapAfter).toBe(surfaces[i].thicknessMm);
      expect(gradient && [gradient.axial, gradient.axialSquare, gradient.radial]).toEqual(surfaces[i].gradient);
    });
  });

  test('ends on its retina, says where it comes from, and has its pupil in front of the lens', () => {
    expect(eye.surfaces.reduce((sum, { gapAfter = 0 }) => sum + gapAfter, 0)).toBeCloseTo(eye.axialLength, 12);
    expect(eyeReferences[eye.source].authors).not.toBe('');
    expect(['read', 'memory']).toContain(eye.status);
    expect(eye.name).not.toBe('');
    expect(eye.conic?.length, 'a conic constant for each surface of the aspheric eyes').toBe(['navarro', 'liouBrennan'].includes(name) ? eye.surfaces.length : undefined);
    const lensFront = eye.surfaces.findIndex(({ indexAfter }, i) => i > 0 && indexAfter > eye.surfaces[i - 1]!.indexAfter);
    expect(eye.stop).toBe(Math.max(0, lensFront));
  });

  test('has one point for a focus, where the trace has it', () => {
    const [first, second] = lineFoci(pencilThrough(eye, { pupil: 4, stop: eye.stop }));
    expect(first).toEqual(second);
    expect(first!.position).toBeCloseTo(trace(eye as EyeSystem<Surface>).backFocus, 9);
    expect([first!.length, first!.direction]).toEqual([0, 180]);
  });
});

test('each source is used by an eye, and one that was recalled says so', () => {
  for (const [id, { status, use }] of Object.entries(eyeReferences)) {
    const using = eyes.filter(([, { source }]) => source === id);
    expect(using.length, id).toBeGreaterThan(0);
    expect(use).not.toBe('');
    if (status === 'memory') for (const [name, eye] of using) expect(eye.status, name).toBe('memory');
  }
});
