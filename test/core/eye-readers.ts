/** From a published entry on schematic eyes and lenses in them to what the tracing says about it; one reader a kind of entry. */
import { lensToFit, residual, trace, traceToric, type EyeSystem, type Surface, type ThinLens, type ToricSystem } from '../../core/eye.js';
import { meridian } from '../../core/index.js';
import type { Refraction } from '../../core/types.js';
import eye from '../fixtures/eye.json' with { type: 'json' };
import published from '../fixtures/published.json' with { type: 'json' };
import type { Entry, Value } from './published.js';

const TOPIC = '4-schematic-eyes-vertex-abcd';

/** The fixture of its own, and the rest of the topic, which the functions on single lenses have answered as well. */
export const entries = [
  ...(eye.entries as unknown as Entry[]),
  ...(published.entries as unknown as Entry[]).filter(({ topic }) => topic === TOPIC),
];

type Reader = (inputs: Entry['inputs']) => Record<string, Value>;
type Written = { radiusMm: number | null; thicknessMm: number; gradient?: [number, number, number] } | [number, number];

function systemOf({ surfaces, indices }: { surfaces: Written[]; indices: number[] }): EyeSystem<Surface> {
  return {
    indexBefore: indices[0]!,
    surfaces: surfaces.map((written, position) => {
      const [radius, gapAfter] = Array.isArray(written) ? written : [written.radiusMm ?? Infinity, written.thicknessMm];
      const [axial, axialSquare, radial] = (!Array.isArray(written) && written.gradient) || [0, 0, 0];
      return { radius, gapAfter, indexAfter: indices[position + 1]!, ...(radial && { gradient: { axial, axialSquare, radial } }) };
    }),
  };
}

const ball = (sphere: number): Refraction => ({ sphere, cylinder: 0, axis: 180 });
const thin = (lens: Refraction, gapAfter?: number, indexAfter?: number): ThinLens => ({ lens, gapAfter, indexAfter });
/** Thin cornea in front of aqueous: most power along the steep meridian, so that a minus cylinder has its axis there. */
const thinCornea = ({ Kflat, Ksteep, steepMeridian, iolDepthMm, n = 1.336 }: Entry['inputs']): ThinLens =>
  thin({ sphere: Ksteep, cylinder: Kflat - Ksteep, axis: steepMeridian }, iolDepthMm, n);
const written = ({ sphere, cylinder, axis }: Refraction) => ({ sphere, cyl: cylinder, axis });
const left = (surfaces: ToricSystem['surfaces'], axialLength: number) => written(residual({ surfaces, axialLength }).cornea);

/** Power at the cornea of a lens in glasses: light from afar focuses behind the lens, and so far from there to the cornea. */
const moved = (backFocus: number, vertexMm: number): number => 1000 / (backFocus - vertexMm);

const READERS: [kind: RegExp, read: Reader][] = [
  [/^eye-/, (inputs) => {
    const system = systemOf(inputs);
    const { power, frontFocus, backFocus, frontPrincipal, backPrincipal, frontNodal, backNodal } = trace(system);
    const alone = system.surfaces.slice(0, 2).map((surface, position) => trace({ surfaces: [surface], indexBefore: inputs.indices[position] }).power);
    return {
      F: power, Fo: frontFocus, Fi: backFocus, f: frontFocus - frontPrincipal, f2: backFocus - backPrincipal,
      H: frontPrincipal, H2: backPrincipal, N: frontNodal, N2: backNodal, P1: alone[0]!, P2: alone[1] ?? 0,
    };
  }],
  [/^vertex12-toric/, ({ rx, vertexMm }) => {
    const { backFocus } = traceToric({ surfaces: [thin({ sphere: rx.sphere, cylinder: rx.cyl, axis: rx.axis })] });
    const [weak, strong] = [moved(backFocus.flat, vertexMm), moved(backFocus.steep, vertexMm)];
    return { sphere: strong, cyl: weak - strong, axis: backFocus.steepMeridian };
  }],
  [/^vertex12-/, ({ spectacle, vertexMm }) => ({ cornea: moved(trace({ surfaces: [thin(ball(spectacle))] }).backFocus, vertexMm) })],
  [/^toric-ratio/, ({ K, iolDepthMm, n }) => ({ ratio: lensToFit({ surfaces: [thin(ball(K), iolDepthMm, n)], axialLength: 24 }).ratio })],
  [/^toric-iol-emmetropia/, (inputs) => {
    const { power, cylinder, ratio } = lensToFit({ surfaces: [thinCornea(inputs)], axialLength: inputs.axialMm });
    return { P180: power.sphere, P90: power.sphere + power.cylinder, iolCyl: cylinder, ratio };
  }],
  [/^toric-iol-rotation/, (inputs) => {
    const cornea = thinCornea(inputs);
    const { power } = lensToFit({ surfaces: [cornea], axialLength: inputs.axialMm });
    return left([cornea, thin({ ...power, axis: meridian(power.axis + inputs.iolRotationDeg) })], inputs.axialMm);
  }],
  [/^toric-iol-oblique/, (inputs) => {
    const { powerAlong, power, powerAcross } = inputs.iol;
    return left([thinCornea(inputs), thin({ sphere: power, cylinder: powerAcross - power, axis: powerAlong })], inputs.axialMm);
  }],
];

export function compute({ id, inputs }: Entry): Record<string, Value> | null {
  return READERS.find(([kind]) => kind.test(id))?.[1](inputs) ?? null;
}
