import type { Point } from '../internal/geometry.js';
import { placeLabels } from '../internal/labels.js';
import type { LabelRequest, Segment } from '../internal/labels.js';
import type { Ends } from '../internal/line.js';
import { EDGE } from '../internal/layout.js';
import { textSize } from '../internal/measure.js';
import { endsOf, screenCorners } from './pencil.drawing.js';
import type { Window } from './pencil.drawing.js';
import { project } from './pencil.camera.js';
import type { Camera } from './pencil.camera.js';
import type { PencilLayout } from './pencil.layout.js';
import type { Scene } from './pencil.scene.js';

/** Weight of the names. */
const WEIGHT = 600;

/** Name of a thing in the drawing, where it stands and the point that it names. */
export interface PlacedName {
  id: string;
  text: string;
  centre: Point;
  /** From where a line leads to the thing where the name had to stand further off. */
  leader: Ends | null;
}

/** Places for the names; some may have none, for the key has them all. */
export function placeNames(scene: Scene, camera: Camera, window: Window, layout: PencilLayout, names: Readonly<Record<string, string>>): PlacedName[] {
  const { small, family } = layout.font;
  const corners = screenCorners(scene, camera, window.side);
  const lines = scene.point ? [] : [scene.front, scene.back].map((focus) => segment(endsOf(focus, camera)));
  const edges = corners.map((corner, index) => segment([corner, corners[(index + 1) % 4]!]));
  const middle = (z: number): Point => project(camera, { x: 0, y: 0 }, z);
  const anchors: Record<string, Point[]> = {
    ...(scene.point ? { point: [middle(scene.circle.position)] } : { front: [lines[0]!.from, lines[0]!.to], back: [lines[1]!.from, lines[1]!.to], circle: [middle(scene.circle.position)] }),
    retina: [project(camera, { x: 0, y: -window.side }, scene.retina.position), project(camera, { x: 0, y: window.side }, scene.retina.position)],
    screen: [corners[1]!, corners[2]!, corners[0]!, corners[3]!],
    light: [-1, 1].map((up) => project(camera, { x: 0, y: up * window.side }, window.from)),
  };
  const requests: LabelRequest[] = Object.entries(anchors).map(([id, points]) => {
    const size = textSize(names[id]!, small, family, WEIGHT);
    return { id, size, candidates: points.flatMap((point) => around(point, size)) };
  });
  const bounds = { left: -layout.half, right: layout.half, top: EDGE - layout.halfHeight, bottom: layout.halfHeight };
  const places = placeLabels(requests, [], [...lines, ...edges], bounds);
  return [...places].map(([id, centre]) => ({ id, text: names[id]!, centre, leader: leader(centre, anchors[id]!, small) }));
}

const segment = ([from, to]: readonly [Point, Point]): Segment => ({ from, to });

/** Centres round a point, near ones first, above and below before beside. */
function around({ x, y }: Point, { width, height }: { width: number; height: number }): Point[] {
  return [6, 22, 44].flatMap((gap) =>
    [[0, -1], [0, 1], [-0.7, -0.7], [0.7, -0.7], [-0.7, 0.7], [0.7, 0.7], [1, 0], [-1, 0]].map(([right, down]) => ({ x: x + right! * (gap + width / 2), y: y + down! * (gap + height / 2) })),
  );
}

/** From the edge of a name to what it names, where the two are apart. */
function leader(centre: Point, points: readonly Point[], small: number): Ends | null {
  const distance = (point: Point): number => Math.hypot(point.x - centre.x, point.y - centre.y);
  const to = points.reduce((best, point) => (distance(point) < distance(best) ? point : best));
  const down = to.y - centre.y;
  if (Math.abs(down) < 1.6 * small) return null;
  const share = (0.75 * small) / Math.abs(down);
  return { x1: centre.x + (to.x - centre.x) * share, y1: centre.y + down * share, x2: to.x, y2: to.y };
}
