import { describe, expect, test } from 'vitest';
import { evaluatePlan, type Astigmatism, type EyePlan } from '../../core/index.js';
import { ARC, BARE, QUIET, edge, found, ids, lensFor, level } from './cautions-support.js';

const EYE: Astigmatism = { magnitude: 1, meridian: 90 };

const leaving = (magnitude: number, meridian: number): EyePlan => ({ ...BARE, ...lensFor(EYE, { magnitude, meridian }) });

describe('over-correction', () => {
  test('when the meridian turns by more than 60°, either way', () => {
    edge('over-correction', leaving(0.5, 30.1), leaving(0.5, 29.9));
    edge('over-correction', leaving(0.5, 149.9), leaving(0.5, 150.1));
  });
  test('when more than 0.1 D is left', () => edge('over-correction', leaving(0.09, 180), leaving(0.11, 180)));
  test('only of what was there', () => {
    const from = (magnitude: number): EyePlan => ({ ...BARE, steepK: 43 + magnitude, ...lensFor({ magnitude, meridian: 90 }, { magnitude: 0.5, meridian: 180 }) });
    edge('over-correction', from(0.09), from(0.11));
  });
  test('counts from what front and back come to together', () => {
    // The front alone is steep at 90; with its back surface the eye is steep at 180 and is turned over by the lens.
    const plan: EyePlan = { ...BARE, steepK: 43.3, backSurface: '0.5@180', lensCylinder: 0.4, lensMeridian: 180 };
    expect(evaluatePlan(plan).after.meridian).toBe(90);
    expect(ids(plan)).toContain('over-correction');
    expect(ids({ ...plan, lensCylinder: 0.05 })).not.toContain('over-correction');
  });
  test('not when the back surface alone turns the meridian', () => {
    expect(ids({ ...QUIET, steepK: 43.3, backSurface: '1@180' })).toEqual([]);
  });
  test('names both meridians, the horizontal one as 180', () => {
    expect(found(leaving(0.5, 180), 'over-correction')).toMatchObject({ level: 'think', text: expect.stringMatching(/from 90° to 180°/) });
  });
  test('of an incision and of arcs as of a lens', () => {
    edge('over-correction', { ...BARE, incisionSite: 90, incisionFlattening: 1.09 }, { ...BARE, incisionSite: 90, incisionFlattening: 1.11 });
    edge('over-correction', { ...ARC, ...BARE, arcFlattening: 1.09 }, { ...ARC, ...BARE, arcFlattening: 1.11 });
  });
});

describe('over-correction-if-full', () => {
  // One arc of 60° at 65 with the rule: 1.70 D intended, 0.85 D expected.
  const arc = (magnitude: number): EyePlan => ({ ...ARC, ...BARE, steepK: 43 + magnitude, arcLength: 60 });

  test('when only the intended effect would do it', () => {
    edge('over-correction-if-full', arc(1.61), arc(1.59));
    expect(ids(arc(0.7))).toContain('over-correction');
    expect(ids(arc(0.7))).not.toContain('over-correction-if-full');
  });
  test('is a note that says by how much', () => {
    expect(found(arc(1.2), 'over-correction-if-full')).toMatchObject({ level: 'note', text: expect.stringContaining('0.50 D') });
  });
  test('not where expected and intended are one', () => {
    expect(ids({ ...arc(1.59), arcFlattening: 0.85 })).not.toContain('over-correction-if-full');
  });
  test('with own figures the table still intends what it intends', () => {
    const own = (share: number): EyePlan => ({ ...arc(1.2), ownFigures: { arcs: { share, sdAlong: 0.3, sdAcross: 0.3 } } });
    expect(ids(own(0.3))).toContain('over-correction-if-full');
    expect(ids(own(0.9))).toContain('over-correction');
  });
});

describe('more-than-before', () => {
  const across = (lensCylinder: number): EyePlan => ({ ...BARE, lensCylinder, lensMeridian: 180 });

  test('when the plan adds more than 0.1 D', () => edge('more-than-before', across(0.09), across(0.11)));
  test('makes think, and names both sizes', () => {
    const { level: how, text } = found(across(0.5), 'more-than-before')!;
    expect(how).toBe('think');
    expect(text).toMatch(/1\.50 D.*1\.00 D/);
  });
  test('compares with front and back together', () => {
    const plan = (lensCylinder: number): EyePlan => ({ ...BARE, backSurface: '0.4@180', lensCylinder, lensMeridian: 180 });
    edge('more-than-before', plan(0.09), plan(0.11));
  });
  test('not without surgery, whatever the back surface adds', () => {
    expect(ids({ ...QUIET, backSurface: '3@180' })).toEqual([]);
  });
});

describe('lens-off', () => {
  const lens = (lensMeridian: number): EyePlan => ({ ...BARE, lensCylinder: 1, lensMeridian });

  test('above 10° off the steep meridian, either way', () => {
    edge('lens-off', lens(100), lens(100.1));
    edge('lens-off', lens(80), lens(79.9));
  });
  test('over the end of the dial', () => {
    const flat = (lensMeridian: number): EyePlan => ({ ...lens(lensMeridian), steepMeridian: 175 });
    edge('lens-off', flat(5), flat(5.1));
  });
  test('counts from what the incision and the arcs leave for it, not from the readings', () => {
    // 1 D at 90 and a cut that flattens 45° by 1 D leave √2 D at 112.5°: what the lens has to answer.
    const cut: EyePlan = { ...lens(90), incisionSite: 45, incisionFlattening: 1 };
    expect(ids(cut)).toContain('lens-off');
    edge('lens-off', { ...cut, lensMeridian: 122.4 }, { ...cut, lensMeridian: 122.6 });
    const arcs: EyePlan = { ...ARC, ...BARE, ...lens(90), arcSite: 45, arcFlattening: 1 };
    edge('lens-off', { ...arcs, lensMeridian: 122.4 }, { ...arcs, lensMeridian: 122.6 });
  });
  test('counts the back surface in', () => {
    // 1 D at 90 and a back surface of 1 D at 45 come to √2 D at 67.5°.
    const plan = (lensMeridian: number): EyePlan => ({ ...lens(lensMeridian), backSurface: '1@45' });
    edge('lens-off', plan(77.4), plan(77.6));
  });
  test('makes think, and names the meridian', () => {
    const { level: how, text } = found(lens(110), 'lens-off')!;
    expect(how).toBe('think');
    expect(text).toMatch(/20° off.*90°/);
  });
  test('not without a lens, and not for one of 0 D', () => {
    expect(level({ ...BARE, lensMeridian: 180 }, 'lens-off')).toBeUndefined();
    expect(level({ ...lens(180), lensCylinder: 0, incisionSite: 90 }, 'lens-off')).toBeUndefined();
  });
  test('not where nothing is left that would have a meridian', () => {
    // The incision has taken all of it: any lens is too much, and none is beside a meridian.
    const plan: EyePlan = { ...lens(90), incisionSite: 90, incisionFlattening: 1 };
    expect(ids(plan)).toContain('over-correction');
    expect(ids(plan)).not.toContain('lens-off');
  });
});
