import { describe, expect, test } from 'vitest';
import { MODEL, type EyePlan } from '../../core/index.js';
import { ARC, BARE, edge, found, ids, level } from './cautions-support.js';

describe('of arcs', () => {
  test('are not raised without arcs', () => {
    expect(ids({ ...ARC, arcCount: 0, arcLength: 120, arcDepth: 900, arcZone: 7, age: null })).toEqual([]);
    expect(ids({ ...ARC, arcCount: 0, arcLength: 15, arcDepth: 100, age: 120, steepK: 43, backSurface: '0@180', steepMeridian: 45 })).toEqual([]);
  });
});

describe('the length', () => {
  test('arc-too-long above 90°', () => edge('arc-too-long', { ...ARC, arcLength: 90 }, { ...ARC, arcLength: 90.1 }));
  test('arc-too-long stops, and says how long', () => {
    expect(found({ ...ARC, arcLength: 95 }, 'arc-too-long')).toMatchObject({ level: 'stop', text: expect.stringContaining('95°') });
  });
  test('arc-short below 30°', () => edge('arc-short', { ...ARC, arcLength: 30 }, { ...ARC, arcLength: 29.9 }));
  test('arc-short is a note, and never said of a long arc', () => {
    expect(level({ ...ARC, arcLength: 20 }, 'arc-short')).toBe('note');
    expect(ids({ ...ARC, arcLength: 120 })).not.toContain('arc-short');
  });
});

describe('the depth', () => {
  const cut = (arcDepth: number, localThickness = 600): EyePlan => ({ ...ARC, arcDepth, localThickness });
  /** Whole micrometres, with a share of them as it would be typed; many of these quotients fall short of the share in binary. */
  const everyThickness = Array.from({ length: 701 }, (_, i) => 300 + i);
  const typed = (share: number, thickness: number): number => Number((share * thickness).toFixed(1));

  test('arc-too-deep from 90 % of the local thickness', () => edge('arc-too-deep', cut(539.4), cut(540)));
  test('arc-too-deep at exactly 90 %, whatever the thickness', () => {
    for (const thickness of everyThickness) expect(ids(cut(typed(0.9, thickness), thickness)), String(thickness)).toContain('arc-too-deep');
  });
  test('arc-shallow below 80 %', () => edge('arc-shallow', cut(480), cut(479.4)));
  test('arc-shallow not at exactly 80 %, whatever the thickness', () => {
    for (const thickness of everyThickness) expect(ids(cut(typed(0.8, thickness), thickness)), String(thickness)).not.toContain('arc-shallow');
  });
  test('one stops, the other is a note, and never both', () => {
    expect(level(cut(560), 'arc-too-deep')).toBe('stop');
    expect(level(cut(400), 'arc-shallow')).toBe('note');
    for (let arcDepth = 100; arcDepth <= 900; arcDepth += 5) {
      const said = ids(cut(arcDepth)).filter((id) => id === 'arc-too-deep' || id === 'arc-shallow');
      expect(said, String(arcDepth)).toEqual(arcDepth >= 540 ? ['arc-too-deep'] : arcDepth < 480 ? ['arc-shallow'] : []);
    }
  });
  test('thickness-unknown without the thickness, and without the depth', () => {
    expect(ids(ARC)).not.toContain('thickness-unknown');
    for (const missing of ['localThickness', 'arcDepth']) expect(level({ ...ARC, [missing]: null }, 'thickness-unknown')).toBe('think');
    const unknown = ids({ ...ARC, localThickness: null, arcDepth: 900 });
    for (const id of ['arc-too-deep', 'arc-shallow']) expect(unknown).not.toContain(id);
  });
  test('thickness-unknown names what is missing', () => {
    expect(found({ ...ARC, localThickness: null }, 'thickness-unknown')!.text).toContain('thickness where the arc will lie');
    expect(found({ ...ARC, arcDepth: null }, 'thickness-unknown')!.text).toContain('depth of the arc is not given');
  });
});

describe('arc-zone', () => {
  test('below 10 mm', () => edge('arc-zone', { ...ARC, arcZone: 10 }, { ...ARC, arcZone: 9.9 }));
  test('not up to 12 mm, the largest that a plan may have', () => {
    for (const arcZone of [10.5, 11, 11.5, 12]) expect(ids({ ...ARC, arcZone })).not.toContain('arc-zone');
  });
  test('is a note that names the circle', () => {
    expect(found({ ...ARC, arcZone: 9 }, 'arc-zone')).toMatchObject({ level: 'note', text: expect.stringContaining('9 mm') });
  });
});

describe('how much there is to correct', () => {
  const front = (magnitude: number): EyePlan => ({ ...ARC, ...BARE, flatK: 42, steepK: 42 + magnitude });

  test('hardly-any below 0.5 D', () => edge('hardly-any', front(0.5), front(0.49)));
  test('beyond-arcs above 4 D', () => edge('beyond-arcs', front(4), front(4.01)));
  test('both make think, and never come together', () => {
    expect(level(front(0.3), 'hardly-any')).toBe('think');
    expect(level(front(4.5), 'beyond-arcs')).toBe('think');
    for (let quarters = 0; quarters <= 24; quarters += 1) {
      expect(ids(front(quarters / 4)).filter((id) => id === 'hardly-any' || id === 'beyond-arcs').length, String(quarters)).toBeLessThan(2);
    }
  });
  test('not of 0.50 D or 4.00 D as typed, whatever the readings', () => {
    for (let hundredths = 2800; hundredths <= 7000; hundredths += 1) {
      const at = (more: number): EyePlan => ({ ...front(0), flatK: hundredths / 100, steepK: (hundredths + more) / 100 });
      expect(ids(at(50)), String(hundredths)).not.toContain('hardly-any');
      expect(ids(at(400)), String(hundredths)).not.toContain('beyond-arcs');
    }
  });
  test('front and back count together: with the rule the back takes away, against it adds', () => {
    edge('hardly-any', { ...front(0.7), backSurface: '0.19@180' }, { ...front(0.7), backSurface: '0.21@180' });
    edge('beyond-arcs', { ...front(3.8), backSurface: '0.19@90' }, { ...front(3.8), backSurface: '0.21@90' });
    // What the incision does is part of the plan and not of what there is.
    expect(ids({ ...front(0.6), incisionSite: 90, incisionFlattening: 0.5 })).not.toContain('hardly-any');
  });
  test('an incision or a lens alone may answer as little or as much as there is', () => {
    for (const magnitude of [0.3, 4.5]) {
      const plan = { ...front(magnitude), arcCount: 0 as const, incisionSite: 270, lensCylinder: magnitude, lensMeridian: 90 };
      for (const id of ['hardly-any', 'beyond-arcs']) expect(ids(plan)).not.toContain(id);
    }
  });
});

describe('the age', () => {
  test('age-unknown, unless the figure is the surgeon’s own for this plan', () => {
    edge('age-unknown', ARC, { ...ARC, age: null });
    expect(level({ ...ARC, age: null }, 'age-unknown')).toBe('note');
    expect(ids({ ...ARC, age: null, arcFlattening: 0.4 })).not.toContain('age-unknown');
    // A share of what the table intends still needs the age.
    expect(ids({ ...ARC, age: null, ownFigures: { arcs: { share: 0.6, sdAlong: 0.3, sdAcross: 0.3 } } })).toContain('age-unknown');
  });
  test('age-outside below 40 and above 90, with the same exception', () => {
    edge('age-outside', { ...ARC, age: 40 }, { ...ARC, age: 39.9 });
    edge('age-outside', { ...ARC, age: 90 }, { ...ARC, age: 90.1 });
    expect(level({ ...ARC, age: 30 }, 'age-outside')).toBe('note');
    expect(ids({ ...ARC, age: 30, arcFlattening: 0.4 })).not.toContain('age-outside');
  });
  test('not both', () => {
    expect(ids({ ...ARC, age: null })).not.toContain('age-outside');
    expect(ids({ ...ARC, age: 30 })).not.toContain('age-unknown');
  });
});

describe('oblique', () => {
  test.each([[60, 59.9], [120, 120.1], [30, 30.1], [150, 149.9]])('not at %d°, but at %d°', (without, having) =>
    edge('oblique', { ...ARC, steepMeridian: without }, { ...ARC, steepMeridian: having }));
  test('not of a round cornea, which has no meridian', () =>
    edge('oblique', { ...ARC, steepMeridian: 45, flatK: 43, steepK: 43 }, { ...ARC, steepMeridian: 45, flatK: 43, steepK: 43.01 }));
  test('is a note, and only where arcs are planned', () => {
    expect(level({ ...ARC, steepMeridian: 135 }, 'oblique')).toBe('note');
    expect(ids({ ...ARC, steepMeridian: 135, arcCount: 0, incisionSite: 135 })).not.toContain('oblique');
  });
});

describe('arc-over-incision', () => {
  // Half the entry is a right triangle with its hypotenuse from the centre to the limbus.
  const halfEntry = (width: number) => (Math.asin(width / 2 / (MODEL.eye.limbusDiameter / 2)) * 180) / Math.PI;
  const touching = 45 / 2 + halfEntry(2.4);
  const entered = (incisionSite: number, arcCount: 1 | 2 = 1): EyePlan => ({ ...ARC, arcCount, incisionSite, incisionWidth: 2.4, incisionFlattening: 0 });

  test.each([1, -1])('where the two touch, on either side (%d)', (side) =>
    edge('arc-over-incision', entered(90 + side * (touching + 0.01)), entered(90 + side * (touching - 0.01))));
  test('over the end of the dial', () => {
    const across = (incisionSite: number): EyePlan => ({ ...entered(incisionSite), arcSite: 355 });
    edge('arc-over-incision', across(355 + touching + 0.01 - 360), across(355 + touching - 0.01 - 360));
  });
  test('on the side of the second arc of a pair', () => {
    expect(ids(entered(270, 1))).not.toContain('arc-over-incision');
    edge('arc-over-incision', entered(270 + touching + 0.01, 2), entered(270 + touching - 0.01, 2));
  });
  test('farther away for a wider entry and a longer arc', () => {
    const apart = 90 + 120 / 2 + halfEntry(3.5);
    const long: EyePlan = { ...entered(0), arcLength: 120, incisionWidth: 3.5 };
    edge('arc-over-incision', { ...long, incisionSite: apart + 0.01 }, { ...long, incisionSite: apart - 0.01 });
  });
  test('not without an incision', () => expect(ids({ ...ARC, arcLength: 120 })).not.toContain('arc-over-incision'));
});
