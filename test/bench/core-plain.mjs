/**
 * The sums of a plan written out by hand, for one eye with all that a plan can hold: what is left of the core without its
 * checks, its refusals, its cautions and its names. The least that the same figures can cost in plain arithmetic.
 */

const RADIANS = Math.PI / 180;

/** Flattening of the incision by 45° from the temporal side. */
const SITE_FACTOR = [1, 1.7, 2, 2.1, 2.2, 1.8, 1.5, 1.2];

/** Readings, back surface `magnitude@meridian`, incision, a pair of arcs by the blade and a lens, in a right eye. */
export function planByHand({ flatK, steepK, steepMeridian, age, back, incisionSite, incisionWidth, arcSite, arcLength, lensCylinder, lensMeridian }) {
  const before = 2 * RADIANS * steepMeridian;
  const behind = 2 * RADIANS * back.meridian;
  const startX = (steepK - flatK) * Math.cos(before) + back.magnitude * Math.cos(behind);
  const startY = (steepK - flatK) * Math.sin(before) + back.magnitude * Math.sin(behind);

  const eighth = ((540 - incisionSite) % 360) / 45;
  const index = Math.floor(eighth);
  const factor = SITE_FACTOR[index % 8] + (eighth - index) * (SITE_FACTOR[(index + 1) % 8] - SITE_FACTOR[index % 8]);
  const cut = factor * Math.max(0, 0.1 + 0.22 * (incisionWidth - 2.2));
  const sdCut = incisionWidth < 2.5 ? 0.3 : incisionWidth < 3 ? 0.35 : 0.45;
  const cutAngle = 2 * RADIANS * incisionSite;
  const cutX = -cut * Math.cos(cutAngle);
  const cutY = -cut * Math.sin(cutAngle);

  const against = steepMeridian <= 30 || steepMeridian >= 150 ? 1.15 : 1;
  const intended = 1.7 * (Math.min(arcLength, 90) / 60) * 2 ** 0.6 * (1 + 0.006 * (Math.min(Math.max(age, 40), 90) - 65)) * against;
  const arcs = 0.5 * intended;
  const arcAngle = 2 * RADIANS * arcSite;
  const arcCos = Math.cos(arcAngle);
  const arcSin = Math.sin(arcAngle);
  const along = Math.max(0.25, 0.45 * arcs) ** 2;
  const across = 0.35 ** 2;

  const lensAngle = 2 * RADIANS * lensMeridian;
  const lensX = -lensCylinder * Math.cos(lensAngle);
  const lensY = -lensCylinder * Math.sin(lensAngle);
  const variance = (3 * RADIANS) ** 2;
  const shrink = Math.exp(-2 * variance);
  const lensAlong = (lensCylinder * lensCylinder * (1 - Math.exp(-4 * variance)) ** 2) / 2;
  const lensAcross = (lensCylinder * lensCylinder * (1 - Math.exp(-8 * variance))) / 2;
  const lensCos = lensX / lensCylinder;
  const lensSin = lensY / lensCylinder;

  const placedX = cutX - arcs * arcCos + lensX * shrink;
  const placedY = cutY - arcs * arcSin + lensY * shrink;
  const own = [
    sdCut * sdCut + along * arcCos * arcCos + across * arcSin * arcSin + lensAlong * lensCos * lensCos + lensAcross * lensSin * lensSin,
    (along - across) * arcCos * arcSin + (lensAlong - lensAcross) * lensCos * lensSin,
    sdCut * sdCut + along * arcSin * arcSin + across * arcCos * arcCos + lensAlong * lensSin * lensSin + lensAcross * lensCos * lensCos,
  ];
  const base = 0.15 ** 2 + 0.15 ** 2;
  return {
    after: astigmatism(startX + cutX - arcs * arcCos + lensX, startY + cutY - arcs * arcSin + lensY),
    afterIntended: astigmatism(startX + cutX - intended * arcCos + lensX, startY + cutY - intended * arcSin + lensY),
    spread: turnedByMarks(startX, startY, placedX, placedY, own, base),
    scatter: { startX, startY, placedX, placedY, own, base },
  };
}

function astigmatism(x, y) {
  const degrees = Math.atan2(y, x) / (2 * RADIANS);
  return { magnitude: Math.sqrt(x * x + y * y), meridian: degrees > 0 ? degrees : degrees + 180 };
}

/** Mean and covariance when marks with an error of 5° turn all that is placed. */
function turnedByMarks(startX, startY, x, y, own, base) {
  const variance = (5 * RADIANS) ** 2;
  const shrink = Math.exp(-2 * variance);
  const square = x * x + y * y;
  const along = ((1 - Math.exp(-4 * variance)) ** 2 * square) / 2;
  const across = ((1 - Math.exp(-8 * variance)) * square) / 2;
  const keep = Math.exp(-8 * variance);
  const half = (own[0] + own[2]) / 2;
  const difference = (keep * (own[0] - own[2])) / 2;
  return {
    x: startX + x * shrink,
    y: startY + y * shrink,
    xx: half + difference + (along * x * x + across * y * y) / square + base,
    xy: keep * own[1] + ((along - across) * x * y) / square,
    yy: half - difference + (along * y * y + across * x * x) / square + base,
  };
}

/** Marks in steps of half a standard deviation, as the scatter of the eye here asks for. */
const MARKS = Array.from({ length: 23 }, (_, index) => index / 2 - 5.5).map((z) => ({ z, weight: (0.5 * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI) }));

/** The chance of `limit` dioptres or less: a sum over the errors of the marks and over the disc, without a look at what could be left out. */
export function chanceByHand({ startX, startY, placedX, placedY, own: [ownXX, ownXY, ownYY], base }, limit, normal) {
  let chance = 0;
  for (const { z, weight } of MARKS) {
    const c = Math.cos(10 * RADIANS * z);
    const s = Math.sin(10 * RADIANS * z);
    const xx = c * c * ownXX - 2 * c * s * ownXY + s * s * ownYY + base;
    const xy = c * s * (ownXX - ownYY) + (c * c - s * s) * ownXY;
    const yy = s * s * ownXX + 2 * c * s * ownXY + c * c * ownYY + base;
    chance += weight * discByHand(startX + placedX * c - placedY * s, startY + placedX * s + placedY * c, xx, xy, yy, limit, normal);
  }
  return chance;
}

/** x in steps of its own, y given x in closed form. */
function discByHand(x, y, xx, xy, yy, limit, normal) {
  const sd = Math.sqrt(yy - (xy * xy) / xx);
  const points = 40;
  let total = 0;
  for (let point = 0.5; point < points; point += 1) {
    const t = (point / points - 0.5) * Math.PI;
    const at = limit * Math.sin(t);
    const half = limit * Math.cos(t);
    const middle = y + (xy / xx) * (at - x);
    total += half * Math.exp((-(at - x) * (at - x)) / (2 * xx)) * (normal((half - middle) / sd) - normal((-half - middle) / sd));
  }
  return (total * Math.PI) / points / Math.sqrt(2 * Math.PI * xx);
}
