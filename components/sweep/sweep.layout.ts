import { clockFromSite, site } from '../../core/numbers.js';
import type { Point } from '../internal/geometry.js';
import { EDGE, GAP, TITLE, figureSize } from '../internal/layout.js';
import type { Label } from '../internal/layout.js';
import { textSize } from '../internal/measure.js';

/** What stays the same while the plan changes. Sizes and places in CSS px, from the upper left corner. */
export interface SweepLayout {
  width: number;
  height: number;
  /** Edges of the plot: 0° and 360°, the end of the vertical axis and nothing remaining. */
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** Middle of the line above the plot in which the figure of the present incision stands. */
  flag: number;
  font: { small: number; family: string };
  title: Label;
  subtitle: Label | null;
  /** Rows under the plot: degrees, names in this eye, hours of the clock. */
  degrees: readonly Label[];
  names: readonly Label[];
  hours: readonly Label[];
}

export interface SweepLayoutInput {
  width: number;
  font: number;
  family: string;
  texts: LayoutTexts;
}

/** What stands around the plot, in the language of the reader. */
export interface LayoutTexts {
  title: string;
  /** What the curve is, the longest text first: the first that fits is taken. */
  subtitles: readonly string[];
  /** Whether the heading begins at the right. */
  rightToLeft: boolean;
  /** The widest figure of the vertical axis. */
  figure: string;
  /** What stands before the hours: bare numbers could be anything. */
  clock: string;
  /** Name of a site in this eye. */
  place(degrees: number): string;
}

/** Height of a row of text over its font size. */
const ROW = 1.25;

/** From the plot to the first row below it: clear of the marker when hardly anything remains. CSS px. */
const BELOW = 12;

/** Above and below the plot: CSS px, and how much of the size of the text. The heading and the flag; three rows. */
const ABOVE_PLOT = { fixed: EDGE + 2, ofText: TITLE + 0.4 + ROW } as const;
const BELOW_PLOT = { fixed: BELOW + EDGE, ofText: 3 * ROW } as const;

/** Least height of the plot itself over the size of the text. */
const LEAST_PLOT = 10;

/**
 * Height of the drawing: the greatest of these, CSS px, over the width, and over the size of the text. The style sheet says
 * the same, so that the height is right before anything is measured, and measuring does not change what it measures.
 */
export const HEIGHT = {
  least: 180,
  ofWidth: 0.55,
  fixed: ABOVE_PLOT.fixed + BELOW_PLOT.fixed,
  ofText: ABOVE_PLOT.ofText + BELOW_PLOT.ofText + LEAST_PLOT,
} as const;

/** From the figures of the vertical axis to the plot: clear of the marker at 0°. CSS px. */
export const BEFORE_AXIS = 12;

/** Least distance of two labels in a row, CSS px. */
const APART = 8;

/** Everything of the drawing that does not depend on the plan, from its width and the size of its text. */
export function layoutSweep({ width, font, family, texts }: SweepLayoutInput): SweepLayout {
  const small = figureSize(font, width);
  const wide = (text: string): number => textSize(text, small, family).width;
  const left = EDGE + Math.max(wide(texts.figure) + BEFORE_AXIS, wide(texts.clock) + GAP + wide('12') / 2);
  const right = width - EDGE - wide('360°') / 2;
  const top = ABOVE_PLOT.fixed + ABOVE_PLOT.ofText * small;
  const height = Math.max(HEIGHT.least, HEIGHT.ofWidth * width, HEIGHT.fixed + HEIGHT.ofText * small);
  const bottom = height - BELOW_PLOT.fixed - BELOW_PLOT.ofText * small;
  const place = (degrees: number): number => left + ((right - left) * degrees) / 360;
  const row = (index: number): number => bottom + BELOW + (index + 0.5) * ROW * small;
  const choose = (y: number, choices: readonly (readonly number[])[], text: (degrees: number) => string): Label[] =>
    fittingRow(choices.map((sites) => sites.map((degrees) => inside({ text: text(degrees), x: place(degrees), y, anchor: 'middle' }, wide, width))), wide);
  return {
    width,
    height,
    left,
    right,
    top,
    bottom,
    flag: top - 2 - (ROW / 2) * small,
    font: { small, family },
    ...heading(texts, width, small, family),
    degrees: choose(row(0), [every(45), every(90), every(180)], (degrees) => `${degrees}°`),
    names: choose(row(1), [every(45), every(90), every(90, 270), every(180), every(180, 180)], (degrees) => texts.place(site(degrees))),
    hours: withHeading(choose(row(2), [every(30), every(90)], hourOf), texts.clock, left - wide('12') / 2 - GAP),
  };
}

/** Sites from 0° on. The last one is the first again, after a whole turn. */
function every(step: number, until = 360): number[] {
  return Array.from({ length: Math.floor(until / step) + 1 }, (_, index) => index * step);
}

function hourOf(degrees: number): string {
  return String(Math.round(clockFromSite(degrees)));
}

/** The first of several rows, the fullest first, in which no two labels come too near. */
function fittingRow(rows: readonly Label[][], wide: (text: string) => number): Label[] {
  const fits = (row: readonly Label[]): boolean =>
    row.every((label, index) => index === 0 || label.x - row[index - 1]!.x >= (wide(label.text) + wide(row[index - 1]!.text)) / 2 + APART);
  return rows.find(fits) ?? [];
}

/** A label moved as far inwards as it would stick out of the drawing. */
function inside(label: Label, wide: (text: string) => number, width: number): Label {
  const half = wide(label.text) / 2 + EDGE;
  return { ...label, x: Math.min(width - half, Math.max(half, label.x)) };
}

function withHeading(hours: readonly Label[], clock: string, end: number): Label[] {
  return hours.length === 0 ? [] : [{ text: clock, x: end, y: hours[0]!.y, anchor: 'end' }, ...hours];
}

/** The name of the eye, and beside it what the curve is, in as many words as there is room for. */
function heading({ title, subtitles, rightToLeft }: LayoutTexts, width: number, small: number, family: string): Pick<SweepLayout, 'title' | 'subtitle'> {
  const y = EDGE + TITLE * small;
  const indent = EDGE + textSize(title, TITLE * small, family, 600).width + small * 0.6;
  const line = (text: string, from: number): Label => ({ text, x: rightToLeft ? width - from : from, y, anchor: rightToLeft ? 'end' : 'start' });
  const subtitle = subtitles.find((text) => indent + textSize(text, small, family).width <= width - EDGE);
  return { title: line(title, EDGE), subtitle: subtitle === undefined ? null : line(subtitle, indent) };
}

/** Where a site stands, CSS px. */
export function xOf({ left, right }: SweepLayout, degrees: number): number {
  return left + ((right - left) * degrees) / 360;
}

/** Where so many dioptres stand on an axis that ends at `end` dioptres, CSS px. */
export function yOf({ top, bottom }: SweepLayout, dioptres: number, end: number): number {
  return bottom - ((bottom - top) * dioptres) / end;
}

/** Last site that a pointer reaches: beyond it the turn starts anew, and the marker stays at the edge. */
const LAST = { whole: 359, fine: 359.9 } as const;

/** The site under a pointer, whole degrees or tenths; beyond an edge the edge itself. */
export function siteAt({ left, right }: SweepLayout, x: number, fine: boolean): number {
  const degrees = (360 * (x - left)) / (right - left);
  const rounded = fine ? Math.round(degrees * 10) / 10 : Math.round(degrees);
  return Math.min(fine ? LAST.fine : LAST.whole, Math.max(0, rounded));
}

/** How far beside the plot a click still means its edge, CSS px. */
const MARGIN = 8;

/** Whether a click means the plot. */
export function inPlot({ left, right, top, bottom }: SweepLayout, { x, y }: Point): boolean {
  return x >= left - MARGIN && x <= right + MARGIN && y >= top - MARGIN && y <= bottom + MARGIN;
}
