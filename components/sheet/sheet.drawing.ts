import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { site, temporalSite, turn } from '../../core/numbers.js';
import type { CompletePlan, EyeSide } from '../../core/numbers.js';
import { RADII } from '../internal/dial-layout.js';
import type { CorneaLayout } from '../internal/dial-layout.js';
import { arcShapes, incisionShape, meridianLine } from '../internal/eye-shapes.js';
import { arcPath, polar, px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { labelText } from '../internal/label-text.js';
import { TITLE } from '../internal/layout.js';
import { line } from '../internal/line.js';
import { INK } from './sheet.plan.js';
import type { Item } from './sheet.plan.js';

/** Room all round for nose and brow, px. */
const RIM = 28;

/** Where numbers may stand, mm from the centre, best first, and how far they keep from each other. */
const NUMBER_RADII = [4, 2.9, 1.8, 0.7];
const NUMBER_ROOM = 1.2;
/** Radius of the ring round a number, px. */
const NUMBER_RING = 10;

/** Clock hours and ink marks share a place outside the limbus, mm. */
const INK_MARK = { tip: 5.95, base: 6.38, halfWidth: 5.5 };

/** What is drawn of the reference mark, degrees on the dial; null where there is none. */
export interface Turned {
  /** By which all that is on the eye has turned on the dial, degrees. */
  by: number;
  reference: number | null;
}

/** The eye with what is planned on it, in black lines that survive a photocopier. */
export function drawSheet(plan: CompletePlan, items: readonly Item[], layout: CorneaLayout, turned: Turned): SVGTemplateResult {
  return svg`${orientation(plan, layout)} ${dial(layout)}
    ${INK.map((degrees) => svg`<path part="ink-mark" class="solid" transform=${place(degrees + turned.by, layout)} d=${inkMark(layout)}></path>`)}
    ${turned.reference === null ? nothing : svg`<path part="reference-mark" class="open" transform=${place(turned.reference, layout)} d=${diamond(layout)}></path>`}
    ${cuts(plan, { ...layout, turn: layout.turn + turned.by })}
    ${numbers(items, layout)}`;
}

/** The sides at which nose and brow are drawn, directions on the screen. */
function sidesOf(eye: EyeSide, view: number): { nose: number; brow: number } {
  return { nose: site(temporalSite(eye) + 180 + view), brow: site(90 + view) };
}

/** What of the drawing is shown: the dial, and more room where nose and brow are. */
export function viewBox(eye: EyeSide, { half, halfHeight, turn: view }: CorneaLayout): string {
  const drawn = Object.values(sidesOf(eye, view));
  const [right, top, left, bottom] = [0, 90, 180, 270].map((side) => (drawn.includes(side) ? RIM : 0)) as [number, number, number, number];
  return [-half - left, -halfHeight - top, 2 * half + left + right, 2 * halfHeight + top + bottom].map(px).join(' ');
}

/** The bridge of the nose at its side, the brow above. */
function orientation({ eye }: CompletePlan, { half, halfHeight, turn: view }: CorneaLayout): SVGTemplateResult {
  const { nose, brow } = sidesOf(eye, view);
  const edge = (side: number): number => (side % 180 === 0 ? half : halfHeight);
  const at = edge(nose);
  return svg`<path part="nose" class="solid" transform="rotate(${px(-nose)})" d="M${px(at + 3)},-32Q${px(at + 18)},-18,${px(at + RIM - 3)},0Q${px(at + 18)},18,${px(at + 3)},32Z"></path>
    <path part="brow" class="brow" d=${arcPath(edge(brow) + RIM / 2, brow - 18, brow + 18)}></path>`;
}

function dial(layout: CorneaLayout): SVGTemplateResult {
  const { scale } = layout;
  return svg`<circle part="limbus" class="open" r=${px(RADII.limbus * scale)}></circle>
    <circle class="fine" r=${px(RADII.pupil * scale)}></circle>
    <circle class="fine" r=${px(RADII.ring * scale)}></circle>
    <path class="fine" d=${layout.tickPath}></path><path class="open" d=${layout.longTickPath}></path>
    ${layout.degrees.map((label) => labelText(label))} ${layout.clock.map((label) => labelText({ ...label, ...polar(label.site + layout.turn, CLOCK * scale) }))}
    ${layout.words.map((label) => labelText(label, 'word'))}<g font-size=${TITLE * layout.size}>${labelText(layout.title, 'title')}</g>`;
}

/** Radius of the clock hours, mm: outside the ink marks. */
const CLOCK = 6.98;

function cuts(plan: CompletePlan, frame: CorneaLayout): SVGTemplateResult {
  const { incisionSite, incisionWidth, arcCount, lensCylinder, lensMeridian } = plan;
  const incision = incisionSite === null ? null : incisionShape(incisionSite, incisionWidth, frame);
  return svg`${lensCylinder && lensMeridian !== null ? line(meridianLine(lensMeridian, frame), 'lens', 'lens-axis') : nothing}
    ${incision && svg`<g part="incision"><path class="tunnel" d=${incision.tunnel}></path><path class="entry" d=${incision.entry}></path></g>`}
    ${arcCount > 0 ? arcShapes(plan, frame).map((shape) => svg`<path part="arc" class="arc" d=${shape}></path>`) : nothing}`;
}

/** The numbers of the table, each inwards of what it names, where no other stands. */
function numbers(items: readonly Item[], { scale, turn: view }: CorneaLayout): SVGTemplateResult[] {
  const taken: Point[] = [];
  return items.map(({ number, lying, kind }) => {
    const radii = kind === 'lens' ? NUMBER_RADII.slice(1) : NUMBER_RADII;
    const candidates = radii.map((radius) => polar(lying + view, radius));
    const free = candidates.find((one) => taken.every((other) => Math.hypot(one.x - other.x, one.y - other.y) > NUMBER_ROOM)) ?? candidates[0]!;
    taken.push(free);
    const at = { x: free.x * scale, y: free.y * scale };
    return svg`<g part="number"><circle class="number" cx=${px(at.x)} cy=${px(at.y)} r=${NUMBER_RING}></circle>${labelText({ ...at, text: String(number), anchor: 'middle' })}</g>`;
  });
}

/** Turns what is drawn towards the right to a direction of the dial. */
function place(degrees: number, { turn: view }: CorneaLayout): string {
  return `rotate(${px(-turn(0, degrees + view))})`;
}

/** A wedge that points at the limbus. */
function inkMark({ scale }: { scale: number }): string {
  const base = px(INK_MARK.base * scale);
  return `M${px(INK_MARK.tip * scale)},0L${base},${-INK_MARK.halfWidth}V${INK_MARK.halfWidth}Z`;
}

function diamond({ scale }: { scale: number }): string {
  const middle = px(RADII.limbus * scale);
  return `M${middle - 8},0L${middle},-6L${middle + 8},0L${middle},6Z`;
}
