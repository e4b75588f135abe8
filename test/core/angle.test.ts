import { describe, expect, test } from 'vitest';
import {
  clockFromSite, fromTemporal, meridian, meridianDistance, mirrorMeridian, mirrorSite, ruleOf, site, siteFromClock, siteName,
  temporalSite, turn,
} from '../../core/index.js';

/** Names by degrees, as on the dial: nasal is at 0° in a right eye and at 180° in a left one. */
const RIGHT = { 0: 'nasal', 45: 'superonasal', 90: 'superior', 135: 'superotemporal', 180: 'temporal', 225: 'inferotemporal', 270: 'inferior', 315: 'inferonasal' };
const LEFT = { 0: 'temporal', 45: 'superotemporal', 90: 'superior', 135: 'superonasal', 180: 'nasal', 225: 'inferonasal', 270: 'inferior', 315: 'inferotemporal' };

describe.each([['right', RIGHT], ['left', LEFT]] as const)('places on the limbus of the %s eye', (eye, names) => {
  test.each(Object.entries(names))('%s° is %s, and 22.4° to either side', (degrees, name) => {
    for (const offset of [-22.4, 0, 22.4, 360, -360]) expect(siteName(Number(degrees) + offset, eye)).toBe(name);
  });

  test.each(Object.keys(names).map(Number))('the name changes at %d° + 22.5°', (degrees) => {
    const here = names[degrees as keyof typeof names];
    const next = names[((degrees + 45) % 360) as keyof typeof names];
    expect(siteName(degrees + 22.49, eye)).toBe(here);
    expect(siteName(degrees + 22.51, eye)).toBe(next);
    expect([here, next]).toContain(siteName(degrees + 22.5, eye));
  });
});

test('the two eyes mirror each other, on the boundaries too', () => {
  for (let degrees = 0; degrees < 360; degrees += 22.5) {
    expect(siteName(degrees, 'right'), String(degrees)).toBe(siteName(mirrorSite(degrees), 'left'));
  }
});

test('temporal is where the directions start', () => {
  for (const eye of ['right', 'left'] as const) {
    expect(fromTemporal(temporalSite(eye), eye)).toBe(0);
    expect(fromTemporal(90, eye)).toBe(90);
    expect(fromTemporal(270, eye)).toBe(270);
    expect(siteName(temporalSite(eye), eye)).toBe('temporal');
  }
});

describe('the clock', () => {
  test.each([[12, 90], [1, 60], [2, 30], [3, 0], [4, 330], [5, 300], [6, 270], [7, 240], [8, 210], [9, 180], [10, 150], [11, 120]])(
    '%d o’clock is %d°, and back',
    (hour, degrees) => {
      expect(siteFromClock(hour)).toBe(degrees);
      expect(clockFromSite(degrees)).toBe(hour);
    },
  );

  test('has parts of hours, and 0 is 12', () => {
    expect(siteFromClock(10.5)).toBe(135);
    expect(clockFromSite(135)).toBe(10.5);
    expect(siteFromClock(0)).toBe(90);
    expect(siteFromClock(24)).toBe(90);
    expect(clockFromSite(450)).toBe(12);
  });
});

describe('printed degrees', () => {
  test.each([[0, 180], [180, 180], [360, 180], [-180, 180], [-0, 180], [-1e-20, 180], [190, 10], [-10, 170], [540.5, 0.5]])('meridian %d is %d', (given, kept) => {
    expect(meridian(given)).toBe(kept);
  });

  test.each([[0, 0], [360, 0], [-90, 270], [720.5, 0.5], [-0, 0], [-1e-20, 0]])('site %d is %d', (given, kept) => {
    expect(site(given)).toBe(kept);
  });

  test('never leave their ranges over many turns', () => {
    for (let tenth = -36_000; tenth <= 36_000; tenth += 7) {
      const [along, place] = [meridian(tenth / 10), site(tenth / 10)];
      expect(along > 0 && along <= 180, `meridian ${along}`).toBe(true);
      expect(place >= 0 && place < 360, `site ${place}`).toBe(true);
    }
  });
});

describe('distances', () => {
  test.each([[10, 170, 20], [0, 180, 0], [45, 135, 90], [90, 30, 60], [179, 361, 2]])('meridians %d and %d are %d° apart', (a, b, apart) => {
    expect(meridianDistance(a, b)).toBe(apart);
    expect(meridianDistance(b, a)).toBe(apart);
  });

  test.each([[350, 10, 20], [10, 350, -20], [0, 180, 180], [180, 0, 180], [90, 90, 0], [0, 181, -179]])('from %d to %d is a turn of %d°', (from, to, by) => {
    expect(turn(from, to)).toBe(by);
  });

  test.each([[30, 150], [180, 180], [90, 90], [0, 180]])('the meridian %d mirrors to %d', (given, kept) => {
    expect(mirrorMeridian(given)).toBe(kept);
  });
});

describe('the rule, with limits of exactly 30° that belong to it', () => {
  test.each([
    [60, 'with'], [90, 'with'], [120, 'with'], [59.99, 'oblique'], [120.01, 'oblique'],
    [30, 'against'], [180, 'against'], [0, 'against'], [150, 'against'], [30.01, 'oblique'], [149.99, 'oblique'],
    [45, 'oblique'], [135, 'oblique'], [240, 'with'], [-30, 'against'],
  ] as const)('steep at %d° is %s', (degrees, rule) => {
    expect(ruleOf({ meridian: degrees })).toBe(rule);
  });
});
