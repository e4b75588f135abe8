/**
 * Real rays: Snell’s law in space through conicoids and toric surfaces, none of it from the core. Bundles of tiny
 * height are what the Gaussian figures are compared with.
 */
export type Vec = readonly [x: number, y: number, z: number];

export interface Ray {
  at: Vec;
  /** Unit vector. */
  to: Vec;
}

/** A surface as built: depth behind its vertex by x and y; radii along two meridians, and conic constants along them. */
export interface Built {
  vertex: number;
  flatRadius: number;
  steepRadius: number;
  steepMeridian: number;
  flatConic: number;
  steepConic: number;
  indexBefore: number;
  indexAfter: number;
}

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const along = ({ at, to }: Ray, t: number): Vec => [at[0] + t * to[0], at[1] + t * to[1], at[2] + t * to[2]];
const unit = (v: Vec): Vec => {
  const size = Math.sqrt(dot(v, v));
  return [v[0] / size, v[1] / size, v[2] / size];
};

/** Depth of a surface and its slopes in x and y. */
export function depthOf({ flatRadius, steepRadius, steepMeridian, flatConic, steepConic }: Built, x: number, y: number): { z: number; zx: number; zy: number } {
  const [c, s] = [Math.cos((steepMeridian * Math.PI) / 180), Math.sin((steepMeridian * Math.PI) / 180)];
  // u along the steep meridian, v across it.
  const [u, v] = [c * x + s * y, c * y - s * x];
  const [cu, cv] = [1 / steepRadius, 1 / flatRadius];
  const top = cu * u * u + cv * v * v;
  const inner = 1 - (1 + steepConic) * cu * cu * u * u - (1 + flatConic) * cv * cv * v * v;
  const root = Math.sqrt(inner);
  const bottom = 1 + root;
  // Quotient rule, with the derivative of the root.
  const zu = (2 * cu * u) / bottom + (top * (1 + steepConic) * cu * cu * u) / (root * bottom * bottom);
  const zv = (2 * cv * v) / bottom + (top * (1 + flatConic) * cv * cv * v) / (root * bottom * bottom);
  return { z: top / bottom, zx: c * zu - s * zv, zy: s * zu + c * zv };
}

/** The ray behind a surface. */
export function refract(ray: Ray, surface: Built): Ray {
  // Newton’s method along the ray, from the plane of the vertex.
  let t = (surface.vertex - ray.at[2]) / ray.to[2];
  let normal: Vec = [0, 0, 1];
  for (let i = 0; i < 30; i += 1) {
    const [x, y, z] = along(ray, t);
    const here = depthOf(surface, x, y);
    normal = [-here.zx, -here.zy, 1];
    const step = (z - surface.vertex - here.z) / dot(ray.to, normal);
    t -= step;
    if (Math.abs(step) < 1e-15) break;
  }
  const n = unit(normal);
  const ratio = surface.indexBefore / surface.indexAfter;
  const cosine = dot(ray.to, n);
  const turn = Math.sqrt(1 - ratio * ratio * (1 - cosine * cosine)) - ratio * cosine;
  return { at: along(ray, t), to: unit([ratio * ray.to[0] + turn * n[0], ratio * ray.to[1] + turn * n[1], ratio * ray.to[2] + turn * n[2]]) };
}

export function throughAll(ray: Ray, surfaces: readonly Built[]): Ray {
  return surfaces.reduce(refract, ray);
}

/** Where a ray crosses the plane z. */
export function crossing(ray: Ray, z: number): [number, number] {
  const [x, y] = along(ray, (z - ray.at[2]) / ray.to[2]);
  return [x, y];
}

/** Rays from afar through a circle in the plane of the first vertex. */
export function bundle(surfaces: readonly Built[], radius: number, count = 90): Ray[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return throughAll({ at: [radius * Math.cos(angle), radius * Math.sin(angle), -5], to: [0, 0, 1] }, surfaces);
  });
}

/** Area of the section of a bundle, > 0 as long as its rays go round as they started: it changes sign in each line focus. */
export function signedArea(rays: readonly Ray[], z: number): number {
  const points = rays.map((ray) => crossing(ray, z));
  return points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);
}

/** Longest extent of a section and its direction, by the second moments of its points about their centre. */
export function extent(rays: readonly Ray[], z: number): { longer: number; shorter: number; direction: number } {
  const points = rays.map((ray) => crossing(ray, z));
  const moment = (of: (p: [number, number]) => number): number => points.reduce((sum, p) => sum + of(p), 0) / points.length;
  const [mx, my] = [moment(([x]) => x), moment(([, y]) => y)];
  const [xx, xy, yy] = [moment(([x]) => (x - mx) ** 2), moment(([x, y]) => (x - mx) * (y - my)), moment(([, y]) => (y - my) ** 2)];
  const half = Math.hypot((xx - yy) / 2, xy);
  // The mean square of a cosine is a half.
  const full = (value: number): number => 2 * Math.sqrt(2 * Math.max(0, value));
  const angle = (Math.atan2(2 * xy, xx - yy) * 90) / Math.PI;
  return { longer: full((xx + yy) / 2 + half), shorter: full((xx + yy) / 2 - half), direction: angle > 0 ? angle : angle + 180 };
}

/** Where f changes sign between a and b, by halving. */
export function signChange(f: (z: number) => number, a: number, b: number): number {
  let [low, high] = [a, b];
  const start = f(a) > 0;
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === start) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
