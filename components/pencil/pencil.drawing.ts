import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import type { Matrix } from '../../core/eye-matrix.js';
import { sectionAt } from '../../core/eye-planned.js';
import { at, polar, polyline, px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { line } from '../internal/line.js';
import { drawnEllipse, project } from './pencil.camera.js';
import type { Camera } from './pencil.camera.js';
import type { Scene } from './pencil.scene.js';

/** Rays round the rim of the pupil. */
const RAYS = 32;

/** Rays of a fan, by their distance from the middle of the pupil. */
const FAN = [-1, -0.6, 0, 0.6, 1] as const;

/** The part of the eye that is drawn: planes in mm from the cornea, half the side of the screen in mm. */
export interface Window {
  from: number;
  to: number;
  side: number;
}

/** Planes nearer to each other than this, mm, are one: then the screen lies behind what is on it. */
const SAME = 1e-4;

/** The bundle in depth, from the back to the front. The light that lies behind the screen is drawn before it. */
export function drawBundle(scene: Scene, camera: Camera, { from, to, side }: Window): SVGTemplateResult {
  const { screen: screened, retina, front, back, circle: least, point } = scene;
  const nearer = camera.backNearer ? 1 : -1;
  const planes: [number, SVGTemplateResult][] = [[retina.position, ellipse(camera, [side, 0, 0, side], retina.position, '', 'retina')]];
  if (!point) {
    planes.push([least.position, ellipse(camera, sectionAt(scene.planned, least.position), least.position, '', 'circle')]);
    planes.push([front.position, focal(front, 'front-line', camera)], [back.position, focal(back, 'back-line', camera)]);
  }
  planes.sort(([a], [b]) => nearer * (a - b));
  const beyond = ([z]: [number, unknown]): boolean => nearer * (z - screened.position) < -SAME;
  const parts: [number, number][] = [[from, screened.position], [screened.position, to]];
  const [far, near] = (camera.backNearer ? parts : parts.reverse()) as [[number, number], [number, number]];
  const focus = project(camera, ORIGIN, least.position);
  const towards = (Math.atan2(camera.along.y, camera.along.x) * 180) / Math.PI;
  return svg`${rays(scene, camera, ...far)} ${planes.filter(beyond).map(([, shape]) => shape)} ${screen(scene, camera, side)}
    ${rays(scene, camera, ...near)} ${planes.filter((plane) => !beyond(plane)).map(([, shape]) => shape)}
    <path class="arrow" d="M4 0-5 4V-4z" transform="translate(${at(project(camera, ORIGIN, to))}) rotate(${px(towards)})"></path>
    ${point ? svg`<circle class="point" r="4" cx=${px(focus.x)} cy=${px(focus.y)}></circle>` : nothing}`;
}

const ORIGIN = { x: 0, y: 0 };

/** All rays through the rim of the pupil, pale; and the fans of both principal meridians, each through its line. */
function rays(scene: Scene, camera: Camera, from: number, to: number): SVGTemplateResult {
  const ends = [from, to].map((z) => ({ z, section: sectionAt(scene.planned, z) })) as [End, End];
  const ray = (degrees: number, share = 1): string => polyline(ends.map((end) => through(camera, end, degrees, share)));
  const round = Array.from({ length: RAYS }, (_, index) => ray((360 * index) / RAYS)).join('');
  const corner = (end: 0 | 1, meridian: number, share: number): Point => through(camera, ends[end], meridian, share);
  const fan = (meridian: number): SVGTemplateResult => svg`<path class="sheet" d=${polyline([corner(0, meridian, 1), corner(1, meridian, 1), corner(1, meridian, -1), corner(0, meridian, -1)], true)}></path>
    <path d=${FAN.map((share) => ray(meridian, share)).join('')}></path>`;
  const { meridian } = scene.astigmatism;
  const [start, end] = [project(camera, ORIGIN, from), project(camera, ORIGIN, to)];
  return svg`${ends.map(({ section, z }) => (z === scene.screen.position ? nothing : ellipse(camera, section, z, 'rim')))}
    ${line({ x1: start.x, y1: start.y, x2: end.x, y2: end.y }, 'axis')}<path part="rays" d=${round}></path>
    ${scene.point ? nothing : svg`<g part="flat-fan" class="fan">${fan(meridian + 90)}</g><g part="steep-fan" class="fan">${fan(meridian)}</g>`}`;
}

interface End {
  z: number;
  section: Matrix;
}

function through(camera: Camera, { z, section: [a, b, c, d] }: End, degrees: number, share: number): Point {
  const { x, y } = polar(degrees, share);
  // The dial counts y upwards.
  return project(camera, { x: a * x - b * y, y: c * x - d * y }, z);
}

/** Ends of a line focus in the drawing. */
export function endsOf({ position, length, direction }: Scene['front'], camera: Camera): [Point, Point] {
  const { x, y } = polar(direction, length / 2);
  return [project(camera, { x, y: -y }, position), project(camera, { x: -x, y }, position)];
}

function focal(focus: Scene['front'], part: string, camera: Camera): SVGTemplateResult {
  const [from, to] = endsOf(focus, camera);
  const ends = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  return svg`<g part=${part}>${line(ends, 'under')}${line(ends, 'focal')}</g>`;
}

/** Corners of the screen in the drawing, the upper right one as seen from the front first. */
export function screenCorners({ screen: { position } }: Scene, camera: Camera, side: number): Point[] {
  return [[1, 1], [-1, 1], [-1, -1], [1, -1]].map(([x, y]) => project(camera, { x: side * x!, y: side * y! }, position));
}

function screen(scene: Scene, camera: Camera, side: number): SVGTemplateResult {
  const { position } = scene.screen;
  return svg`<path part="screen" d=${polyline(screenCorners(scene, camera, side), true)}></path>
    ${ellipse(camera, sectionAt(scene.planned, position), position, 'patch')}`;
}

function ellipse(camera: Camera, section: Matrix, z: number, className: string, part = ''): SVGTemplateResult {
  const { centre, rx, ry, angle } = drawnEllipse(camera, section, z);
  return svg`<ellipse class=${className || nothing} part=${part || nothing} rx=${px(rx)} ry=${px(ry)} transform="translate(${at(centre)}) rotate(${px(angle)})"></ellipse>`;
}
