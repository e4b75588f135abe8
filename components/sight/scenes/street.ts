import { SCENES, SIDE } from '../sight.scenes.js';
import { WHOLE, box, circle, linear, n, oval, polygon, radial } from './shapes.js';
import type { Drawing, Paint, Shape } from './shapes.js';

/** px for a metre at a distance of one metre, height of the horizon in the picture, and of the onlooker's eye in m. */
const FOCAL = SIDE / 2 / Math.tan((SCENES.street.degrees / 360) * Math.PI);
const HORIZON = 292;
const EYE = 1.6;

/** A point of the street (m to the right, up, and ahead) in the picture. */
const px = (x: number, z: number): number => SIDE / 2 + (FOCAL * x) / z;
const py = (y: number, z: number): number => HORIZON - (FOCAL * (y - EYE)) / z;

/** A rectangle on the ground, or on a wall along the street. */
const ground = (x0: number, x1: number, z0: number, z1: number, y = 0): string => polygon(px(x0, z0), py(y, z0), px(x1, z0), py(y, z0), px(x1, z1), py(y, z1), px(x0, z1), py(y, z1));
const wall = (x: number, z0: number, z1: number, y0: number, y1: number): string => polygon(px(x, z0), py(y0, z0), px(x, z1), py(y0, z1), px(x, z1), py(y1, z1), px(x, z0), py(y1, z0));

export function street(): Drawing {
  return { shapes: [...sky(), ...hills(), ...road(), ...houses(), ...wires(), ...lamps(), ...cars(), ...bicycle(), ...signs()] };
}

function sky(): Shape[] {
  const shapes: Shape[] = [{ path: WHOLE, paint: linear([0, 0, 0, HORIZON], '#1d2b52', '#3d4a7d', '#7d6a96', '#d98f86', '#f7bd7c') }];
  shapes.push({ path: [oval(210, 206, 90, 4), oval(300, 222, 70, 3), oval(250, 238, 60, 2.5)].join(''), paint: 'rgba(255,205,170,.55)' });
  shapes.push({ path: circle(294, 92, 40), paint: radial(294, 92, 40, 'rgba(255,250,225,.5)', 'rgba(255,250,225,0)') });
  // A young moon: lit from below right, where the sun has gone.
  shapes.push({ path: 'M288 78a15 15 0 1 0 18 21a13 13 0 0 1 -18 -21z', paint: '#fff8df' });
  shapes.push({ path: [circle(226, 60, 1.4), circle(252, 128, 1.1), circle(338, 48, 1.2), circle(318, 150, 1), circle(208, 112, 1.1)].join(''), paint: '#f5f1ff' });
  return shapes;
}

function hills(): Shape[] {
  return [
    { path: `M0 ${HORIZON}V268Q120 258 200 272T300 264T512 274V${HORIZON}z`, paint: '#5d5577' },
    { path: `M180 ${HORIZON}V280H198V272H206V282H226V276H236V284H252V262L256 250L260 262V284H276V277H290V282H304V274H314V283H332V${HORIZON}z`, paint: '#3b3a57' },
  ];
}

function road(): Shape[] {
  const shapes: Shape[] = [
    { path: box(0, HORIZON, SIDE, SIDE - HORIZON), paint: linear([0, HORIZON, 0, SIDE], '#6a6076', '#4b4b5c', '#3a3d4b') },
    { path: polygon(px(-3.4, 400), py(0, 400), px(3.4, 400), py(0, 400), px(3.4, 8), py(0, 8), px(-3.4, 8), py(0, 8)), paint: linear([0, HORIZON, 0, SIDE], '#7d6a7c', '#444657', '#2c303c') },
  ];
  for (const x of [-3.4, 3.25]) shapes.push({ path: ground(x, x + 0.15, 8, 400), paint: '#a9a2ad' });
  for (let z = 18; z < 200; z += 8) shapes.push({ path: ground(-0.07, 0.07, z, z + 4), paint: '#d9d3cf' });
  // A crossing.
  for (let x = -3; x < 3; x += 1) shapes.push({ path: ground(x + 0.15, x + 0.65, 12.2, 15.2), paint: '#dcd7d3' });
  return shapes;
}

/** Where a house begins and ends along the street, how high it is, its colour, and which of its windows are lit. */
type House = readonly [z0: number, z1: number, height: number, colour: string, lit: number];
const LEFT: readonly House[] = [
  [22, 33, 8.2, '#5b4a55', 0b010010],
  [33, 45, 6.4, '#4d4a63', 0b101001],
  [45, 60, 9.4, '#5a4a5e', 0b011010],
  [60, 90, 7, '#54506a', 0b100101],
  [90, 160, 8.4, '#5d5776', 0b001010],
];
const RIGHT: readonly House[] = [
  [22, 36, 6.8, '#4a4559', 0b100100],
  [36, 47, 9.2, '#57475a', 0b010011],
  [47, 64, 7.2, '#4f4b66', 0b101010],
  [64, 100, 8.8, '#585272', 0b010001],
  [100, 160, 7, '#5f5978', 0b000110],
];

function houses(): Shape[] {
  // From the far end, so that near ones cover far ones.
  return [...[...LEFT].reverse().flatMap((house) => houseOf(house, -5.2)), ...[...RIGHT].reverse().flatMap((house) => houseOf(house, 5.2))];
}

const WINDOW_LIT: Paint = '#ffd98a';
const WINDOW_DARK: Paint = '#2c2f45';

function houseOf([z0, z1, height, colour, lit]: House, x: number): Shape[] {
  const back = x * 1.9;
  const ridge = height + 2.2;
  const middle = (x + back) / 2;
  const shapes: Shape[] = [
    // The gable that faces the onlooker, the roof, and the front along the street.
    { path: polygon(px(x, z0), py(0, z0), px(back, z0), py(0, z0), px(back, z0), py(height, z0), px(middle, z0), py(ridge, z0), px(x, z0), py(height, z0)), paint: shade(colour, -14) },
    { path: polygon(px(x, z0), py(height, z0), px(x, z1), py(height, z1), px(middle, z1), py(ridge, z1), px(middle, z0), py(ridge, z0)), paint: shade(colour, -26) },
    { path: wall(x, z0, z1, 0, height), paint: colour },
    { path: wall(x, z0, z1, 0, 0.6), paint: shade(colour, -12) },
    { path: wall(x, z0, z1, height - 0.25, height), paint: shade(colour, 16) },
  ];
  const length = z1 - z0;
  for (let i = 0; i < 6; i += 1) {
    const floor = Math.floor(i / 3);
    const from = z0 + length * (0.12 + 0.3 * (i % 3));
    const to = from + length * 0.15;
    const door = floor === 0 && i === 1;
    const [low, high] = door ? [0, 2.3] : [floor * 3 + 1.1, floor * 3 + 2.6];
    const on = (lit >> i) & 1;
    shapes.push({ path: wall(x, from - 0.02 * length, to + 0.02 * length, low - (door ? 0 : 0.12), high + 0.12), paint: shade(colour, 22) });
    shapes.push({ path: wall(x, from, to, low, high), paint: on ? WINDOW_LIT : door ? '#33283a' : WINDOW_DARK });
    if (!door) {
      shapes.push({ path: `M${n(px(x, (from + to) / 2))} ${n(py(low, (from + to) / 2))}V${n(py(high, (from + to) / 2))}`, paint: shade(colour, 22), width: 20 / z0 });
    }
  }
  return shapes;
}

/** A lighter or darker colour. */
function shade(colour: string, by: number): string {
  const part = (at: number): string => Math.max(0, Math.min(255, Number.parseInt(colour.slice(at, at + 2), 16) + by)).toString(16).padStart(2, '0');
  return `#${part(1)}${part(3)}${part(5)}`;
}

/** Lamps hang over the street from wires between the houses. */
function wires(): Shape[] {
  return [36, 52, 80].map((z) => ({ path: `M${n(px(-5.2, z))} ${n(py(7, z))}Q${n(px(0, z))} ${n(py(5.6, z))} ${n(px(5.2, z))} ${n(py(7, z))}`, paint: '#20222f', width: 40 / z }));
}

function lamps(): Shape[] {
  return [80, 52, 36].flatMap((z) => lamp(0, z));
}

function lamp(x: number, z: number): Shape[] {
  const [cx, cy, m] = [px(x, z), py(6.1, z), FOCAL / z];
  return [
    { path: oval(cx, py(0, z), 3 * m, 0.5 * m), paint: radial(cx, py(0, z), 3 * m, 'rgba(255,214,140,.45)', 'rgba(255,214,140,0)') },
    { path: circle(cx, cy, 1.5 * m), paint: radial(cx, cy, 1.5 * m, 'rgba(255,232,170,.75)', 'rgba(255,214,140,.18)', 'rgba(255,214,140,0)') },
    { path: polygon(cx - 0.34 * m, cy, cx - 0.1 * m, cy - 0.32 * m, cx + 0.1 * m, cy - 0.32 * m, cx + 0.34 * m, cy), paint: '#20222f' },
    { path: oval(cx, cy, 0.26 * m, 0.16 * m), paint: '#fffbe6' },
  ];
}

function cars(): Shape[] {
  return [...car(1.5, 48, false), ...car(-1.65, 29, true)];
}

/** A car from the front with its lamps lit, or from behind. */
function car(x: number, z: number, towards: boolean): Shape[] {
  const m = FOCAL / z;
  const at = (dx: number, y: number): [number, number] => [px(x, z) + dx * m, py(y, z)];
  const outline = (...points: [number, number][]): string => polygon(...points.flatMap(([dx, y]) => at(dx, y)));
  const lightY = py(0.72, z);
  const shapes: Shape[] = [
    { path: oval(px(x, z), py(0, z), 1.05 * m, 0.14 * m), paint: 'rgba(12,14,24,.6)' },
    { path: box(px(x, z) - 0.82 * m, py(0.35, z), 0.24 * m, 0.35 * m) + box(px(x, z) + 0.58 * m, py(0.35, z), 0.24 * m, 0.35 * m), paint: '#12131c' },
    { path: outline([-0.66, 1.42], [0.66, 1.42], [0.82, 0.95], [0.9, 0.85], [0.9, 0.28], [-0.9, 0.28], [-0.9, 0.85], [-0.82, 0.95]), paint: towards ? '#31475c' : '#5b2f3a' },
    { path: outline([-0.58, 1.36], [0.58, 1.36], [0.72, 0.97], [-0.72, 0.97]), paint: towards ? '#8b93b4' : '#4a4a66' },
    { path: outline([-0.9, 0.5], [0.9, 0.5], [0.9, 0.4], [-0.9, 0.4]), paint: towards ? '#22323f' : '#3f2029' },
    { path: outline([-0.26, 0.62], [0.26, 0.62], [0.26, 0.5], [-0.26, 0.5]), paint: '#e8e4d8' },
  ];
  for (const side of [-0.66, 0.66]) {
    const cx = px(x, z) + side * m;
    const glow = towards ? ['rgba(255,248,224,.95)', 'rgba(255,240,200,.25)', 'rgba(255,240,200,0)'] : ['rgba(255,80,60,.7)', 'rgba(255,60,50,.16)', 'rgba(255,60,50,0)'];
    const reach = (towards ? 0.75 : 0.4) * m;
    shapes.push({ path: circle(cx, lightY, reach), paint: radial(cx, lightY, reach, ...glow) });
    shapes.push({ path: towards ? circle(cx, lightY, 0.13 * m) : oval(cx, lightY, 0.17 * m, 0.09 * m), paint: towards ? '#fffdf2' : '#ff5a46' });
    // What the wet road gives back.
    const down = towards ? 2.4 : 1.2;
    const top = py(0, z);
    shapes.push({ path: polygon(cx - 0.1 * m, top, cx + 0.1 * m, top, cx + 0.2 * m, top + down * m, cx - 0.2 * m, top + down * m), paint: linear([0, top, 0, top + down * m], towards ? 'rgba(255,244,214,.5)' : 'rgba(255,90,70,.4)', 'rgba(255,240,200,0)') });
  }
  return shapes;
}

/** At the kerb on the right, with its lamp on. */
function bicycle(): Shape[] {
  const [z, m] = [23, FOCAL / 23];
  const [x, y] = [px(2.85, z), py(0.34, z)];
  const at = (dx: number, dy: number): string => `${n(x + dx * m)} ${n(y - dy * m)}`;
  const rear = [-0.52, 0] as const;
  const front = [0.54, 0] as const;
  const spokes = [rear, front].map(([cx]) => Array.from({ length: 8 }, (_, i) => `M${at(cx, 0)}L${at(cx + 0.32 * Math.cos((i * Math.PI) / 4), 0.32 * Math.sin((i * Math.PI) / 4))}`).join('')).join('');
  const wheel = ([cx]: readonly [number, number]): string => circle(x + cx * m, y, 0.33 * m);
  return [
    { path: oval(x, py(0, z), 0.95 * m, 0.05 * m), paint: 'rgba(12,14,24,.5)' },
    { path: spokes, paint: '#8d90a3', width: 0.8 },
    { path: wheel(rear) + wheel(front), paint: '#14151f', width: 3 },
    { path: `M${at(-0.52, 0)}L${at(-0.2, 0.5)}L${at(0.36, 0.54)}L${at(-0.08, -0.04)}L${at(-0.52, 0)}M${at(-0.08, -0.04)}L${at(-0.24, 0.6)}`, paint: '#d9643a', width: 3.4 },
    { path: `M${at(0.54, 0)}L${at(0.33, 0.62)}L${at(0.2, 0.66)}M${at(-0.36, 0.62)}H${n(x - 0.12 * m)}`, paint: '#d8d4d0', width: 3 },
    { path: circle(x + 0.45 * m, y - 0.5 * m, 0.35 * m), paint: radial(x + 0.45 * m, y - 0.5 * m, 0.35 * m, 'rgba(255,250,220,.5)', 'rgba(255,250,220,0)') },
    { path: circle(x + 0.45 * m, y - 0.5 * m, 3.4), paint: '#fffdf0' },
  ];
}

/** A give-way sign on its post, left, and a traffic light that is green, right. */
function signs(): Shape[] {
  const z = 24;
  const m = FOCAL / z;
  const [x, y] = [px(-3.6, z), py(2.6, z)];
  const post = (at: number): Shape => ({ path: box(at - 0.03 * m, py(2.6, z), 0.06 * m, 2.6 * m), paint: '#8f93a5' });
  const [tx, ty] = [px(3.85, z), py(3, z)];
  return [
    post(x),
    { path: polygon(x - 0.42 * m, y - 0.36 * m, x + 0.42 * m, y - 0.36 * m, x, y + 0.36 * m), paint: '#c33a33' },
    { path: polygon(x - 0.27 * m, y - 0.27 * m, x + 0.27 * m, y - 0.27 * m, x, y + 0.19 * m), paint: '#f1eee8' },
    post(tx),
    { path: box(tx - 0.17 * m, ty - 0.45 * m, 0.34 * m, 0.95 * m), paint: '#181a24' },
    { path: circle(tx, ty - 0.29 * m, 0.11 * m), paint: '#4a2327' },
    { path: circle(tx, ty + 0.02 * m, 0.11 * m), paint: '#4a3d20' },
    { path: circle(tx, ty + 0.33 * m, 0.42 * m), paint: radial(tx, ty + 0.33 * m, 0.42 * m, 'rgba(90,255,180,.55)', 'rgba(90,255,180,0)') },
    { path: circle(tx, ty + 0.33 * m, 0.11 * m), paint: '#b6ffdc' },
  ];
}
