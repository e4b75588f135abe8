/** Own figures for the next plan: what is advised, when not, and simulated surgeons whose truth is known. */
import fc from 'fast-check';
import seedrandom from 'seedrandom';
import { describe, expect, test } from 'vitest';
import {
  MODEL, OWN_LIMITS, add, arcFlattening, completePlan, evaluatePlan, flattening, incisionFlattening, ruleOf, toVector, type Astigmatism, type Vector,
} from '../../core/index.js';
import { OUTCOME_CONSTANTS, ownFigures, readTable, summarise, type OutcomeRecord } from '../../core/outcomes.js';
import { at, numbersIn, recordOf, tableOf } from './outcomes-support.js';
import { between } from './plans.js';
import { normals } from './random.js';

const LEAST = OUTCOME_CONSTANTS.leastEyes.value;
const ALLOWED = 4;
const SITE = 180;
const ENTRY = incisionFlattening({ width: 2.4, site: SITE, eye: 'right' });

/** An eye whose incision at `site` flattens and turns by so much. */
const entered = (flattened: number, torque: number, rest: Partial<OutcomeRecord> = {}, before: Astigmatism = at(1, 90)): OutcomeRecord => {
  const site = rest.incision?.site ?? SITE;
  return recordOf(before, add(flattening(flattened, site), flattening(torque, site + 135)), rest);
};

/** `n` eyes with exactly this mean and these squares: pairs on both sides. */
const paired = (n: number, flattened: number, torque: number, sd: number): OutcomeRecord[] =>
  Array.from({ length: n }, (_, index) => entered(flattened + (index % 2 ? sd : -sd), torque + (index % 4 < 2 ? sd : -sd)));

describe('a few eyes that weigh heavily', () => {
  test('are told where mean and spatial median are further apart than in 99 of 100 normal series of that size', () => {
    const random = seedrandom('series with eyes far off');
    const seen = [0, 0];
    for (let series = 0; series < 100; series += 1) {
      const n = 20 + Math.floor(40 * random());
      const [far, off, centre] = [Math.floor(6 * random()), 3 * random(), 3 * random() - 1];
      const changes = Array.from({ length: n }, (_, index) => ({ x: centre + (index < far ? off : random() + random() - 1), y: 0.5 + (index < far ? off : random() + random() - 1) }));
      const { centroid, robust } = summarise(changes);
      const { x, y } = robust!.spatialMedian;
      const sd = changes.map((change) => Math.hypot(change.x - x, change.y - y)).sort((a, b) => a - b)[n >> 1]! / 1.1774100225154747;
      // Each component of the difference is normal with the variance (4/π − 1)·σ²/n, so that its square is exponential.
      const surprise = Math.exp(-(Math.hypot(centroid!.x - x, centroid!.y - y) ** 2) / (2 * (4 / Math.PI - 1) * (sd ** 2 / n)));
      const told = ownFigures(changes.map((change) => entered(change.x, change.y))).evidence.incision.notes.some(({ id }) => id === 'farEyes');
      expect(told, `${series}: chance of more ${surprise}`).toBe(surprise < 0.01);
      seen[Number(told)]! += 1;
    }
    expect(Math.min(...seen)).toBeGreaterThan(20);
  });

  test.each([0.1, 0.3, 0.7])('are not told of eyes that all have the change %d D, whatever its sum is rounded to', (change) => {
    const { notes } = ownFigures(Array.from({ length: 23 }, () => entered(change, change / 3))).evidence.incision;
    expect(notes.map(({ id }) => id)).not.toContain('farEyes');
  });
});

describe('incisions of different widths', () => {
  // The decimals are what is meant: 2.7 − 2.4 is 0.3 to everyone but the computer.
  test.each([[2.2, 2.5, false], [2.4, 2.7, false], [1.8, 2.1, false], [2.4, 2.71, true], [2.2, 2.6, true]])('of %d and %d mm: told %s', (narrow, wide, told) => {
    const eyes = paired(40, 0.4, 0.1, 0.2).map((eye, index) => ({ ...eye, incision: { ...eye.incision!, width: index % 2 ? narrow : wide } }));
    expect(ownFigures(eyes).evidence.incision.notes.some(({ id }) => id === 'mixedWidths')).toBe(told);
  });
});

describe('the incision', () => {
  test('by hand: 40 eyes of 0.40 D against a model of 0.144 D', () => {
    const { incision, evidence } = ownFigures(paired(40, 0.4, 0.1, 0.2));
    const variance = (78 * ((40 * 0.08) / 78) + 10 * 0.09) / 88;
    const weight = 0.15 ** 2 / (0.15 ** 2 + variance / 40);
    expect(ENTRY.flattening).toBeCloseTo(0.144, 12);
    expect(incision!.sd).toBeCloseTo(Math.sqrt(variance), 10);
    expect(incision!.flattening).toBeCloseTo(0.144 + weight * (0.4 - 0.144), 10);
    expect(incision!.torque).toBeCloseTo(weight * 0.1, 10);
    expect(incision!.eyes).toBe(40);
    expect(evidence.incision).toMatchObject({ eyes: 40, observed: expect.closeTo(0.4, 10), model: expect.closeTo(0.144, 10), weight: expect.closeTo(weight, 10) });
    expect(evidence.incision.reason.text).toBe('The own mean of 40 eyes is 0.40 D, the model says 0.14 D. The own mean counts 95 %, which gives 0.39 D.');
  });

  test(`is not advised under ${LEAST} eyes, and is from ${LEAST} on`, () => {
    for (const n of [0, 1, 2, LEAST - 1]) {
      const { incision, arcs, evidence } = ownFigures(paired(n, 0.4, 0, 0.2));
      expect([incision, arcs]).toEqual([null, null]);
      expect([evidence.incision.reason.id, evidence.incision.notes]).toEqual(['tooFew', []]);
      expect(evidence.incision.observed === null).toBe(n === 0);
      expect([...numbersIn(evidence)].every(Number.isFinite)).toBe(true);
    }
    expect(ownFigures(paired(LEAST - 1, 0.4, 0, 0.2)).evidence.incision.reason.text).toBe('Eyes for this figure: 19. Own figures are given from 20 eyes on; until then the model stands.');
    expect(ownFigures(paired(LEAST, 0.4, 0, 0.2)).incision).not.toBeNull();
  });

  test('lies between the model and the own mean, nearer to it with every eye', () =>
    fc.assert(fc.property(between(-0.5, 1.5), between(0.05, 0.8), (mean, sd) => {
      const advice = [20, 40, 100, 1000].map((n) => ownFigures(paired(n, mean, 0, sd)).incision!.flattening);
      const far = [...advice.map((figure) => Math.abs(figure - mean)), 0];
      for (let i = 0; i < advice.length; i += 1) {
        expect(far[i]).toBeGreaterThanOrEqual(far[i + 1]! - 1e-9);
        expect((advice[i]! - ENTRY.flattening) * (mean - advice[i]!)).toBeGreaterThanOrEqual(-1e-9);
      }
    }), { seed: 20240229, numRuns: 100 }));

  test('does not mind which eye, which site or which astigmatism, as long as the frame is that of the incision', () => {
    const straight = paired(40, 0.4, 0.1, 0.2);
    const turned = straight.map((_, index) => {
      const site = index % 2 ? 0 : 180;
      return entered(0.4 + (index % 2 ? 0.2 : -0.2), 0.1 + (index % 4 < 2 ? 0.2 : -0.2), { eye: index % 2 ? 'left' : 'right', incision: { site, width: 2.4 } }, at(1 + index / 20, 1 + index * 4));
    });
    const [one, other] = [ownFigures(straight), ownFigures(turned)];
    for (const figure of ['flattening', 'torque', 'sd'] as const) expect(other.incision![figure]).toBeCloseTo(one.incision![figure], 9);
    expect(other.evidence.incision.notes).toEqual([]);
  });

  test('eyes with arcs, or without a site, do not count for it', () => {
    const arcs = { count: 1 as const, site: 90, length: 45, method: 'blade' as const };
    const eyes = [...paired(30, 0.4, 0, 0.2), ...paired(9, 3, 0, 0).map((eye) => ({ ...eye, arcs })), ...paired(9, 3, 0, 0).map((eye) => ({ ...eye, incision: null }))];
    expect(ownFigures(eyes).incision).toEqual(ownFigures(paired(30, 0.4, 0, 0.2)).incision);
  });

  test('mixed places and widths are told', () => {
    const eyes = paired(40, 0.4, 0, 0.2).map((eye, index) => entered(0.4 + (index % 2 ? 0.2 : -0.2), 0, { incision: { site: index % 2 ? 90 : 180, width: index % 3 ? 2.2 : 2.75 } }));
    const { notes } = ownFigures(eyes).evidence.incision;
    expect(notes.map(({ text }) => text)).toEqual([
      'These eyes were entered at different places (temporal, superior). The figure is their average; choose one place.',
      'These eyes were entered with widths from 2.2 mm to 2.75 mm. The figure is their average; choose one width.',
    ]);
  });

  test('a mean that no plan accepts is refused, with the reason', () => {
    const { incision, evidence } = ownFigures(paired(40, 4, 0, 0.1));
    expect(incision).toBeNull();
    expect(evidence.incision.reason.text).toBe('What 40 eyes come to, 3.92 D, is outside of what a plan accepts (-1.00 D to 3.00 D). Check the table.');
  });

  test('so is a scatter that no plan accepts', () => {
    const { incision, evidence } = ownFigures(paired(40, 0.4, 0, 2.5));
    expect([incision, evidence.incision.reason.id]).toEqual([null, 'beyond']);
    expect(ownFigures(paired(40, 0.4, 2.8, 0.1)).incision).toBeNull();
  });

  test('a slip of 90° among them is told; a normal series of 40 hardly ever is', () => {
    const eyes = paired(40, 0.15, 0, 0.2);
    expect(ownFigures(eyes).evidence.incision.notes).toEqual([]);
    expect(ownFigures([...eyes, entered(5, 0)]).evidence.incision.notes.map(({ id }) => id)).toEqual(['farEyes']);
    const normal = normals('far eyes');
    let told = 0;
    for (let series = 0; series < 2000; series += 1) {
      const { notes } = ownFigures(Array.from({ length: 40 }, () => entered(0.15 + 0.3 * normal(), 0.3 * normal()))).evidence.incision;
      told += notes.length;
    }
    // Meant to be 1 in 100 with a known scatter; the scatter is estimated from half of the eyes, and 40 are not many.
    expect(told / 2000).toBeLessThan(0.025);
    expect(told).toBeGreaterThan(0);
  }, 60_000);
});

describe('a plan', () => {
  test('takes what is advised as it is, and counts with it', () => {
    const own = ownFigures(paired(40, 0.4, 0.1, 0.2));
    const plan = completePlan({ steepK: 44, incisionSite: SITE, ownFigures: own });
    expect(plan.ownFigures).toEqual({ incision: own.incision });
    const step = evaluatePlan(plan).steps.find(({ source }) => source === 'incision')!;
    expect(step.basis).toBe('own');
    const expected: Vector = add(flattening(own.incision!.flattening, SITE), flattening(own.incision!.torque, SITE + 135));
    expect(Math.hypot(step.vector.x - expected.x, step.vector.y - expected.y)).toBeLessThan(1e-12);
    expect(JSON.parse(JSON.stringify(own))).toEqual(own);
  });

  test('without advice stands on the model', () => {
    expect(completePlan({ ownFigures: ownFigures([]) }).ownFigures).toBeNull();
  });

  test('any table leads to figures that a plan accepts, or to none', () => {
    const eye = fc.record({ flattened: between(-3, 6), torque: between(-5, 5), arcs: fc.boolean(), length: between(15, 120) });
    fc.assert(fc.property(fc.array(eye, { minLength: 15, maxLength: 60 }), (eyes) => {
      const records = eyes.map(({ flattened, torque, arcs, length }) => entered(flattened, torque, { arcs: arcs ? { count: 1, site: 90, length, method: 'blade' } : null }));
      const own = ownFigures(records);
      expect(() => completePlan({ ownFigures: own })).not.toThrow();
      expect([...numbersIn(own)].every(Number.isFinite)).toBe(true);
    }), { seed: 20240229, numRuns: 500 });
  });

  test('figures from a table and by hand are the same', () => {
    const eyes = Array.from({ length: 30 }, (_, index) => ({ flatAfter: '43.5', steepAfter: String(44.25 + (index % 5) / 10), meridianAfter: String(80 + index) }));
    const { records } = readTable(tableOf(eyes));
    const by = records.map(({ before, after, ...rest }) => recordOf(before, { x: toVector(after).x - toVector(before).x, y: toVector(after).y - toVector(before).y }, { incision: rest.incision }));
    expect(ownFigures(records).incision!.flattening).toBeCloseTo(ownFigures(by).incision!.flattening, 10);
  });
});

/** A surgeon's arcs in one eye: `share` of the intended effect plus scatter, after an incision that does what is said of it. */
function arced(share: number, along: number, across: number, entry: Vector, length: number, before: Astigmatism, method: 'blade' | 'laser' = 'blade'): OutcomeRecord {
  const arcs = { count: 1 as const, site: before.meridian, length, method };
  const { intended } = arcFlattening({ ...arcs, age: 65, rule: ruleOf(before) });
  const cut = add(flattening(share * intended + along, arcs.site), flattening(across, arcs.site + 135));
  return recordOf(before, add(cut, entry), { arcs, age: 65 });
}

describe('arcs', () => {
  const typical = flattening(ENTRY.flattening, SITE);
  const exact = (n: number, share: number, scatter: number) =>
    Array.from({ length: n }, (_, index) => arced(share, index % 2 ? scatter : -scatter, index % 4 < 2 ? scatter : -scatter, typical, 60, at(2, 90)));

  test('by hand: 40 pairs of eyes with a share of 0.80', () => {
    const { arcs, evidence } = ownFigures(exact(40, 0.8, 0.4));
    const intended = 1.7;
    const noise = ENTRY.sd ** 2;
    const model = { along: Math.max(0.25, 0.45 * 0.5 * intended) ** 2, across: 0.35 ** 2 };
    const along = (39 * ((40 * 0.16) / 39 - noise) + 10 * model.along) / 49;
    const across = (40 * (0.16 - noise) + 10 * model.across) / 50;
    const weight = 0.15 ** 2 / (0.15 ** 2 + (along + noise) / (40 * intended ** 2));
    expect(evidence.arcs.observed).toBeCloseTo(0.8, 10);
    expect(evidence.arcs.model).toBeCloseTo(0.5, 10);
    expect(arcs!.sdAlong).toBeCloseTo(Math.sqrt(along), 10);
    expect(arcs!.sdAcross).toBeCloseTo(Math.sqrt(across), 10);
    expect(arcs!.share).toBeCloseTo(0.5 + weight * 0.3, 10);
    expect(evidence.arcs.reason.text).toMatch(/^The own mean of 40 eyes is 80 %, the model says 50 %\./);
  });

  test('less scatter than the incision alone explains counts as none, not as less', () => {
    const { arcs } = ownFigures(exact(40, 0.8, 0.01));
    expect(arcs!.sdAlong).toBeCloseTo(Math.sqrt((10 * Math.max(0.25, 0.45 * 0.85) ** 2) / 49), 10);
  });

  test(`are not advised under ${LEAST} eyes; blade and laser together are told`, () => {
    expect(ownFigures(exact(LEAST - 1, 0.8, 0.4)).arcs).toBeNull();
    const both = [...exact(20, 0.8, 0.4), ...Array.from({ length: 20 }, (_, index) => arced(0.8, index % 2 ? 0.3 : -0.3, 0, typical, 60, at(2, 90), 'laser'))];
    const { arcs, evidence } = ownFigures(both);
    expect(arcs).not.toBeNull();
    expect(evidence.arcs.notes.map(({ id }) => id)).toEqual(['mixedMethods']);
    expect(evidence.arcs.model).toBeCloseTo((MODEL.arcs.bladeShare + MODEL.arcs.laserShare) / 2, 10);
  });

  test('are judged with the surgeon’s own incision where that is known', () => {
    const mine = flattening(0.5, SITE);
    const entries = paired(400, 0.5, 0, 0.2);
    const eyes = Array.from({ length: 40 }, (_, index) => arced(0.6, index % 2 ? 0.4 : -0.4, 0, mine, 60, at(2, 90)));
    // The arcs lie across the entry, whose flattening takes away from theirs.
    expect(ownFigures([...entries, ...eyes]).evidence.arcs.observed).toBeCloseTo(0.6, 2);
    expect(ownFigures(eyes).evidence.arcs.observed).toBeCloseTo(0.6 - (0.5 - ENTRY.flattening) / 1.7, 10);
  });

  test('so is the torque of that incision, which an oblique arc would take for its own', () => {
    const mine = add(flattening(0.2, SITE), flattening(0.4, SITE + 135));
    const oblique = at(2, 45);
    const eyes = Array.from({ length: 40 }, (_, index) => arced(0.6, index % 2 ? 0.4 : -0.4, 0, mine, 60, oblique));
    expect(ownFigures([...paired(4000, 0.2, 0.4, 0.2), ...eyes]).evidence.arcs.observed).toBeCloseTo(0.6, 2);
    // Torque of 0.4 D at 180° is steep at 45°, so that it takes away from arcs there.
    expect(ownFigures(eyes).evidence.arcs.observed).toBeCloseTo(0.6 - 0.4 / 1.7, 10);
  });

  test('without an incision bear the whole change, and scatter at least as two measurements of the cornea do', () => {
    const { arcs, evidence } = ownFigures(Array.from({ length: 40 }, (_, index) => ({ ...arced(0.8, index % 2 ? 0.4 : -0.4, 0, { x: 0, y: 0 }, 60, at(2, 90)), incision: null })));
    const along = (39 * ((40 * 0.16) / 39 - 2 * 0.15 ** 2) + 10 * Math.max(0.25, 0.45 * 0.5 * 1.7) ** 2) / 49;
    expect(evidence.arcs.observed).toBeCloseTo(0.8, 10);
    expect(arcs!.sdAlong).toBeCloseTo(Math.sqrt(along), 10);
    expect(arcs!.sdAcross).toBeCloseTo(Math.sqrt((10 * 0.35 ** 2) / 50), 10);
  });

  test('a share that no plan accepts is refused', () => {
    expect(ownFigures(exact(40, 2.5, 0.3))).toMatchObject({ arcs: null, evidence: { arcs: { reason: { id: 'beyond' } } } });
    expect(OWN_LIMITS.share.max).toBe(1.5);
  });
});

describe('simulated surgeons, drawn as the shrinkage assumes', () => {
  const SURGEONS = 3000;
  const PRIOR = OUTCOME_CONSTANTS.surgeonSd.value;

  test.each([20, 60])('%d eyes: the error that is stated is that of the figure, and the figure is better than the own mean', (n) => {
    const normal = normals(`surgeons ${n}`);
    let [held, turned, squares, raw, sds] = [0, 0, 0, 0, 0];
    for (let i = 0; i < SURGEONS; i += 1) {
      const truth = { flattening: ENTRY.flattening + PRIOR * normal(), torque: PRIOR * normal() };
      const { incision, evidence } = ownFigures(Array.from({ length: n }, () => entered(truth.flattening + ENTRY.sd * normal(), truth.torque + ENTRY.sd * normal())));
      const { error, observed } = evidence.incision;
      held += Number(Math.abs(incision!.flattening - truth.flattening) <= 1.959964 * error!);
      turned += Number(Math.abs(incision!.torque - truth.torque) <= 1.959964 * error!);
      squares += (incision!.flattening - truth.flattening) ** 2;
      raw += (observed! - truth.flattening) ** 2;
      sds += incision!.sd ** 2;
    }
    const allowed = ALLOWED * Math.sqrt((0.95 * 0.05) / SURGEONS);
    console.log(`${n} eyes: ${(100 * held / SURGEONS).toFixed(1)} % and ${(100 * turned / SURGEONS).toFixed(1)} % held; error ${Math.sqrt(squares / SURGEONS).toFixed(4)} D, of the own mean ${Math.sqrt(raw / SURGEONS).toFixed(4)} D`);
    expect(Math.abs(held / SURGEONS - 0.95)).toBeLessThanOrEqual(allowed);
    expect(Math.abs(turned / SURGEONS - 0.95)).toBeLessThanOrEqual(allowed);
    expect(squares).toBeLessThan(raw);
    // Exactly τ²/(τ² + σ²/n) of it where σ is known.
    expect(squares / raw).toBeCloseTo(PRIOR ** 2 / (PRIOR ** 2 + ENTRY.sd ** 2 / n), 1);
    expect(Math.sqrt(sds / SURGEONS)).toBeCloseTo(ENTRY.sd, 2);
  }, 120_000);

  test('arcs: share and scatter', () => {
    const n = 40;
    const normal = normals('arcs');
    let [held, along, across] = [0, 0, 0];
    for (let i = 0; i < SURGEONS; i += 1) {
      // A share below 0 would be refused; it is 1 surgeon in 2000.
      const share = Math.max(0.1, MODEL.arcs.bladeShare + OUTCOME_CONSTANTS.shareSd.value * normal());
      const eyes = Array.from({ length: n }, (_, index) => {
        const entry = add(flattening(ENTRY.flattening + ENTRY.sd * normal(), SITE), flattening(ENTRY.sd * normal(), SITE + 135));
        return arced(share, 0.4 * normal(), 0.35 * normal(), entry, 30 + (index % 5) * 12, at(2, 60 + index));
      });
      const { arcs, evidence } = ownFigures(eyes);
      held += Number(Math.abs(arcs!.share - share) <= 1.959964 * evidence.arcs.error!);
      along += arcs!.sdAlong ** 2;
      across += arcs!.sdAcross ** 2;
    }
    console.log(`arcs: ${(100 * held / SURGEONS).toFixed(1)} % held; sd along ${Math.sqrt(along / SURGEONS).toFixed(3)}, across ${Math.sqrt(across / SURGEONS).toFixed(3)}`);
    expect(Math.abs(held / SURGEONS - 0.95)).toBeLessThanOrEqual(ALLOWED * Math.sqrt((0.95 * 0.05) / SURGEONS));
    expect(Math.sqrt(across / SURGEONS)).toBeCloseTo(0.35, 1);
    // The own scatter of 0.40 D, averaged with that of the model, which is 0.25 to 0.33 D for such arcs.
    expect(Math.sqrt(along / SURGEONS)).toBeGreaterThan(0.36);
    expect(Math.sqrt(along / SURGEONS)).toBeLessThan(0.41);
  }, 120_000);
});
