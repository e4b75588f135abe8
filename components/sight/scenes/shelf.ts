import { SIDE } from '../sight.scenes.js';
import { WHOLE, box, circle, linear, n, oval, polygon } from './shapes.js';
import type { Drawing, Shape } from './shapes.js';

export function shelf(): Drawing {
  return { shapes: [...room(), ...clock(160, 150, 104), ...frame(), ...books(), ...plant(), ...mug()] };
}

const BOARD = 404;

function room(): Shape[] {
  const stripes: Shape[] = [];
  for (let x = 16; x < SIDE; x += 32) stripes.push({ path: `M${x} 0V${SIDE}`, paint: '#e3e8e2', width: 5 });
  return [
    { path: WHOLE, paint: linear([0, 0, SIDE, SIDE], '#eef1ea', '#dfe5df') },
    ...stripes,
    { path: box(0, BOARD + 22, SIDE, 34), paint: linear([0, BOARD + 22, 0, BOARD + 56], 'rgba(60,50,40,.28)', 'rgba(60,50,40,0)') },
    { path: box(0, BOARD, SIDE, 22), paint: linear([0, BOARD, 0, BOARD + 22], '#b98c5e', '#8f6538') },
    { path: `M0 ${BOARD + 1}H${SIDE}`, paint: '#d6ae83', width: 2 },
    { path: `M60 ${BOARD + 22}V${BOARD + 70}Q60 ${BOARD + 84} 46 ${BOARD + 90}M452 ${BOARD + 22}V${BOARD + 70}Q452 ${BOARD + 84} 466 ${BOARD + 90}`, paint: '#4f4338', width: 6 },
  ];
}

/** Ten minutes past ten. */
function clock(x: number, y: number, r: number): Shape[] {
  const ray = (turn: number, from: number, to: number): string => {
    const [s, c] = [Math.sin(2 * Math.PI * turn), -Math.cos(2 * Math.PI * turn)];
    return `M${n(x + from * r * s)} ${n(y + from * r * c)}L${n(x + to * r * s)} ${n(y + to * r * c)}`;
  };
  const marks = (count: number, from: number): string => Array.from({ length: count }, (_, i) => ray(i / count, from, 0.88)).join('');
  return [
    { path: circle(x + 5, y + 8, r), paint: 'rgba(60,50,40,.18)' },
    { path: circle(x, y, r), paint: '#20455c' },
    { path: circle(x, y, 0.94 * r), paint: '#fdfcf8' },
    { path: marks(60, 0.84), paint: '#4a4a4a', width: 1.3 },
    { path: marks(12, 0.72), paint: '#1b1b1b', width: 4 },
    { path: ray(10 / 12 + 1 / 72, -0.12, 0.5), paint: '#1b1b1b', width: 7 },
    { path: ray(10 / 60, -0.14, 0.76), paint: '#1b1b1b', width: 4.5 },
    { path: ray(35 / 60, -0.2, 0.82), paint: '#b8402f', width: 1.8 },
    { path: circle(x, y, 6), paint: '#b8402f' },
  ];
}

/** A framed view of the sea with a boat. */
function frame(): Shape[] {
  const [x, y, w, h] = [318, 62, 156, 128];
  return [
    { path: box(x + 4, y + 7, w, h), paint: 'rgba(60,50,40,.18)' },
    { path: box(x, y, w, h), paint: '#3a332c' },
    { path: box(x + 7, y + 7, w - 14, h - 14), paint: '#f7f4ec' },
    { path: box(x + 20, y + 20, w - 40, h - 40), paint: linear([0, y + 20, 0, y + h - 20], '#bcdcec', '#e9f1ea') },
    { path: box(x + 20, y + 72, w - 40, 36), paint: linear([0, y + 72, 0, y + 108], '#3d86a8', '#1f5f83') },
    { path: circle(x + 112, y + 42, 9), paint: '#f2c14e' },
    { path: polygon(x + 62, y + 78, x + 94, y + 78, x + 87, y + 88, x + 68, y + 88), paint: '#7a3324' },
    { path: polygon(x + 77, y + 34, x + 77, y + 75, x + 98, y + 75) + polygon(x + 74, y + 42, x + 74, y + 75, x + 58, y + 75), paint: '#fffdf6' },
    { path: `M${x + 75.5} ${y + 32}V${y + 80}`, paint: '#4b3526', width: 1.6 },
    { path: `M${x + 28} ${y + 94}h22M${x + 96} ${y + 98}h24M${x + 58} ${y + 101}h16`, paint: '#cfe6ee', width: 1.6 },
  ];
}

/** Width, height and colour of each spine, and of the bands on it. */
const SPINES: readonly (readonly [width: number, height: number, colour: string, band: string])[] = [
  [26, 128, '#8c3b2e', '#f0d9a8'],
  [18, 112, '#2f5d62', '#e9efe6'],
  [32, 140, '#d9b45b', '#4b3a1a'],
  [20, 120, '#3c4f76', '#e8e4da'],
  [24, 134, '#6f7f4f', '#f3efdc'],
  [16, 106, '#b5654a', '#fbeedd'],
  [28, 126, '#4a3b53', '#d9c7de'],
];

function books(): Shape[] {
  const shapes: Shape[] = [];
  let x = 44;
  for (const [width, height, colour, band] of SPINES) {
    const top = BOARD - height;
    shapes.push({ path: box(x, top, width, height), paint: colour });
    shapes.push({ path: box(x, top, 2.5, height), paint: 'rgba(255,255,255,.2)' }, { path: box(x + width - 2.5, top, 2.5, height), paint: 'rgba(0,0,0,.25)' });
    shapes.push({ path: box(x, top + 12, width, 3) + box(x, top + 18, width, 1.5) + box(x, BOARD - 20, width, 3), paint: band });
    shapes.push({ path: lettering(x + width / 2, top + 32, height - 62, width), paint: band });
    x += width + 1;
  }
  // One that leans on the row.
  const lean = { path: polygon(x + 30, BOARD, x + 52, BOARD, x + 24, BOARD - 122, x + 2, BOARD - 117), paint: '#1f6f78' };
  shapes.push(lean, { path: polygon(x + 5.6, BOARD - 101, x + 27.6, BOARD - 106, x + 26.7, BOARD - 110, x + 4.7, BOARD - 105) + polygon(x + 25.4, BOARD - 20, x + 47.4, BOARD - 20, x + 46.7, BOARD - 23, x + 24.7, BOARD - 23), paint: '#f4ecd8' });
  return shapes;
}

/** Strokes across a spine, as letters that run along it look from afar. */
function lettering(x: number, top: number, length: number, width: number): string {
  const half = Math.min(5, width / 4);
  let path = '';
  for (let y = top, i = 0; y < top + length - 4; y += 5, i += 1) if (i % 5 !== 4) path += box(x - half, y, 2 * half, i % 3 ? 2.2 : 3.4);
  return path;
}

function plant(): Shape[] {
  const [x, y] = [344, BOARD];
  /** From the soil to a tip, as wide on one side as on the other. */
  const leaf = (dx: number, dy: number): string => {
    const [mx, my] = [x + dx / 2, y - 60 - dy / 2 - Math.abs(dx) / 5];
    const [ox, oy] = [0.17 * dy, 0.17 * dx];
    return `M${x} ${y - 58}Q${n(mx - ox)} ${n(my - oy)} ${x + dx} ${y - 60 - dy}Q${n(mx + ox)} ${n(my + oy)} ${x} ${y - 58}z`;
  };
  const back = [leaf(-56, 66), leaf(58, 62), leaf(-22, 108), leaf(28, 104)].join('');
  const front = [leaf(-74, 26), leaf(74, 22), leaf(-42, 88), leaf(46, 84), leaf(2, 116)].join('');
  return [
    { path: back, paint: '#3f6b45' },
    { path: front, paint: '#5c9157' },
    { path: polygon(x - 34, y - 58, x + 34, y - 58, x + 26, y, x - 26, y), paint: linear([x - 34, 0, x + 34, 0], '#d98d63', '#a95b37') },
    { path: box(x - 38, y - 66, 76, 14), paint: linear([x - 38, 0, x + 38, 0], '#e39c73', '#b56641') },
  ];
}

function mug(): Shape[] {
  const [x, y, w, h] = [424, BOARD - 60, 50, 60];
  return [
    { path: `M${x + w - 4} ${y + 14}q24 -4 22 14q-2 18 -22 16`, paint: '#2a6f97', width: 7 },
    { path: `M${x} ${y}h${w}v${h - 8}q0 8 -8 8h${16 - w}q-8 0 -8 -8z`, paint: linear([x, 0, x + w, 0], '#3f8fbc', '#235d80') },
    { path: oval(x + w / 2, y, w / 2, 5), paint: '#1c4a66' },
    { path: box(x, y + 20, w, 4) + box(x, y + 28, w, 4), paint: '#f2efe6' },
  ];
}
