import { fromTemporal, meridian, site as siteOf } from './angle.js';
import { exceeds, whole } from './caution.js';
import { DEFAULTS } from './fields.js';
import { KERATOMETRIC_CONSTANT } from './keratometry.js';
import { LIMITS } from './limits.js';
import type { Limits } from './limits.js';
import { OUTCOME_CONSTANTS } from './outcomes-constants.js';
import { numberIn, trimmed } from './outcomes-numbers.js';
import { said } from './outcomes-text.js';
import type { OutcomeWording } from './outcomes-text.js';
import type { Fault, Heading, OutcomeColumn, OutcomeRecord, Said } from './outcomes-types.js';
import { eyeOf, methodOf, placeOf } from './outcomes-words.js';
import type { ArcMethod, Astigmatism, EyeSide, Quantity } from './types.js';

/** Limits of what only a table of results has; the rest is that of a plan. "Assumed": wide enough for any eye. */
export const OUTCOME_LIMITS = {
  magnitude: { min: 0, max: 15, unit: 'D' },
} as const satisfies Record<string, Limits>;

/** Radii of the readings that a plan accepts. They overlap with no reading in dioptres, so a number tells its unit. */
const RADII: Limits = { min: KERATOMETRIC_CONSTANT / LIMITS.steepK.max, max: KERATOMETRIC_CONSTANT / LIMITS.flatK.min, unit: 'mm' };
const NEITHER = 20;

/** What was counted while reading. */
export interface Tally {
  points: number;
  commas: number;
  swapped: number;
  again: number;
  widthAssumed: number;
  siteUnknown: number;
  methodAssumed: number;
  /** Least and greatest of the steep meridians in each column. */
  meridians: Partial<Record<OutcomeColumn, { from: number; to: number; eyes: number }>>;
}

type Time = 'Before' | 'After';

/** Reads rows into records. One reader for a whole table, so that a row costs no more than its cells. */
export class RowReader {
  readonly tally: Tally = { points: 0, commas: 0, swapped: 0, again: 0, widthAssumed: 0, siteUnknown: 0, methodAssumed: 0, meridians: {} };
  private readonly places: Partial<Record<OutcomeColumn, number>> = {};
  private cells: readonly string[] = [];
  private trimmed: readonly string[] = [];
  private faults: Fault[] = [];
  private unit: 'D' | 'mm' | null = null;
  private readonly seen = { right: new Map<string, number>(), left: new Map<string, number>() };
  // A table says the same few words over and over.
  private readonly eyes = remembered(eyeOf);
  private readonly methods = remembered(methodOf);
  private readonly namedPlaces = remembered(placeOf);

  constructor(private readonly headings: readonly Heading[]) {
    for (const { column, index } of headings) if (column) this.places[column] = index;
  }

  has(column: OutcomeColumn): boolean {
    return this.places[column] !== undefined;
  }

  /** The record of a row, or everything that speaks against it. */
  read(cells: readonly string[], line: number): OutcomeRecord | Fault[] {
    this.cells = cells;
    this.trimmed = cells.map(trimmed);
    this.faults = [];
    const label = this.places.label === undefined ? null : cells[this.places.label]!;
    const eye = this.eye();
    const before = this.cornea('Before');
    const after = this.cornea('After');
    const incision = this.incision(eye);
    const arcs = this.arcs(eye);
    const record = {
      line, label, eye, before: before.astigmatism, after: after.astigmatism, readings: before.readings, incision, arcs, lens: this.lens(),
      age: this.number('age', LIMITS.age), predicted: this.has('predictedMeridian') ? this.astigmatism('predictedMagnitude', 'predictedMeridian') : null,
    };
    if (this.faults.length > 0) return this.faults;
    const first = this.firstLine(label, record.eye, line);
    if (first !== line) return [this.fault('label', cells, said('again', { line: whole(first, '') }))];
    this.count(record.incision === null, incision?.assumed, arcs?.assumed);
    return {
      ...(record as OutcomeRecord),
      incision: incision && { site: incision.site, width: incision.width },
      arcs: arcs && { count: arcs.count, site: arcs.site, length: arcs.length, method: arcs.method },
    };
  }

  private count(siteUnknown: boolean, widthAssumed = false, methodAssumed = false): void {
    this.tally.siteUnknown += Number(siteUnknown);
    this.tally.widthAssumed += Number(widthAssumed);
    this.tally.methodAssumed += Number(methodAssumed);
  }

  private text(column: OutcomeColumn): string {
    const place = this.places[column];
    return place === undefined ? '' : this.trimmed[place]!;
  }

  private eye(): EyeSide {
    const eye = this.eyes(this.text('eye'));
    if (eye === null) this.refuse('eye', this.text('eye') ? 'eye' : 'missing');
    return eye ?? 'right';
  }

  /** Readings where there are both, else the astigmatism as stated; where there is both, they must not contradict each other. */
  private cornea(time: Time): { astigmatism: Astigmatism | null; readings: OutcomeRecord['readings'] } {
    const [flatColumn, steepColumn, stated, along] = [`flat${time}`, `steep${time}`, `magnitude${time}`, `meridian${time}`] as const;
    if (!this.text(flatColumn) && !this.text(steepColumn)) {
      if (!this.text(stated)) this.refuse(this.has(stated) ? stated : flatColumn, 'missing');
      return { astigmatism: this.text(stated) ? this.astigmatism(stated, along) : null, readings: null };
    }
    this.unit = null;
    const flat = this.reading(flatColumn);
    const steep = this.reading(steepColumn);
    if (flat === null || steep === null) return { astigmatism: null, readings: null };
    const magnitude = steep - flat;
    if (magnitude < 0) {
      this.tally.swapped += 1;
      this.refuse(steepColumn, 'swapped', { flat: { value: flat, unit: 'D', digits: 2 } });
      return { astigmatism: null, readings: null };
    }
    const other = this.number(stated, OUTCOME_LIMITS.magnitude);
    if (other !== null && exceeds(Math.abs(other - magnitude), OUTCOME_CONSTANTS.sameMagnitude.value)) this.refuse(stated, 'differs', { difference: { value: magnitude, unit: 'D', digits: 2 } });
    return { astigmatism: this.placed(magnitude, along), readings: { flat, steep } };
  }

  /** A keratometer reading in D. */
  private reading(column: OutcomeColumn): number | null {
    const place = this.places[column];
    const named = place === undefined ? null : this.headings[place]!.unit;
    const text = this.text(column);
    const written = text ? numberIn(text) : null;
    const unit = named ?? (written?.unit === 'D' || written?.unit === 'mm' ? written.unit : written && written.value < NEITHER ? 'mm' : 'D');
    const value = this.number(column, unit === 'mm' ? RADII : LIMITS.flatK);
    if (value === null) {
      if (!text) this.refuse(column, 'missing');
      return null;
    }
    if (this.unit && this.unit !== unit) this.refuse(column, 'unitsMixed', { unit: this.unit });
    this.unit = unit;
    return unit === 'mm' ? KERATOMETRIC_CONSTANT / value : value;
  }

  private astigmatism(magnitudeColumn: OutcomeColumn, along: OutcomeColumn): Astigmatism | null {
    const magnitude = this.number(magnitudeColumn, OUTCOME_LIMITS.magnitude);
    if (magnitude !== null) return this.placed(magnitude, along);
    if (this.text(along) && !this.text(magnitudeColumn)) this.refuse(along, 'together', { column: magnitudeColumn });
    return null;
  }

  private placed(magnitude: number, along: OutcomeColumn): Astigmatism | null {
    const steep = this.number(along, LIMITS.steepMeridian);
    if (steep !== null) {
      this.note(along, steep);
      return { magnitude, meridian: meridian(steep) };
    }
    if (magnitude === 0 && !this.text(along)) return { magnitude, meridian: 180 };
    if (!this.text(along)) this.refuse(along, 'missing');
    return null;
  }

  private note(column: OutcomeColumn, degrees: number): void {
    const { from, to, eyes } = (this.tally.meridians[column] ??= { from: degrees, to: degrees, eyes: 0 });
    this.tally.meridians[column] = { from: Math.min(from, degrees), to: Math.max(to, degrees), eyes: eyes + 1 };
  }

  private incision(eye: EyeSide): { site: number; width: number; assumed: boolean } | null {
    const where = this.site('incisionSite', eye);
    const width = this.number('incisionWidth', LIMITS.incisionWidth);
    return where === null ? null : { site: where, width: width ?? DEFAULTS.incisionWidth, assumed: width === null };
  }

  private arcs(eye: EyeSide): { count: 1 | 2; site: number; length: number; method: ArcMethod; assumed: boolean } | null {
    const length = this.number('arcLength', LIMITS.arcLength);
    const count = this.number('arcCount', LIMITS.arcCount);
    const where = this.site('arcSite', eye);
    const method = this.text('arcMethod') ? this.methods(this.text('arcMethod')) : 'blade';
    if (method === null) this.refuse('arcMethod', 'method');
    if (count === 0 || (!this.text('arcLength') && !this.text('arcCount'))) return null;
    if (count !== null && count !== 1 && count !== 2) this.refuse('arcCount', 'count');
    for (const column of ['arcCount', 'arcLength', 'arcSite'] as const) if (!this.text(column)) this.refuse(column, 'missing');
    if (count === null || length === null || where === null || method === null) return null;
    return { count: count as 1 | 2, length, site: where, method, assumed: !this.text('arcMethod') };
  }

  private lens(): OutcomeRecord['lens'] {
    const cylinder = this.number('lensCylinder', LIMITS.lensCylinder);
    const along = this.number('lensMeridian', LIMITS.lensMeridian);
    if (!cylinder) return null;
    if (!this.text('lensMeridian')) this.refuse('lensMeridian', 'missing');
    return along === null ? null : { cylinder, meridian: meridian(along) };
  }

  /** A place in degrees, or by one of the eight names, which depend on the eye. */
  private site(column: 'incisionSite' | 'arcSite', eye: EyeSide): number | null {
    const direction = this.namedPlaces(this.text(column));
    if (direction !== null) return fromTemporal(direction, eye);
    const degrees = this.number(column, LIMITS[column]);
    return degrees === null ? null : siteOf(degrees);
  }

  /** The number in a cell within its limits; null where there is none, or where it is refused. */
  private number(column: OutcomeColumn, limits: Limits): number | null {
    const text = this.text(column);
    if (text === '') return null;
    const written = numberIn(text);
    if (!written) return this.refuse(column, 'number');
    if (written.unit && written.unit !== limits.unit) return limits.unit ? this.refuse(column, 'unit', { unit: limits.unit }) : this.refuse(column, 'number');
    if (written.value < 0 && limits.min === 0 && limits.unit === 'D') return this.refuse(column, 'negative');
    const { min, max } = limits;
    if (written.value < min || written.value > max) return this.refuse(column, 'range', { min: quantity(min, ''), max: quantity(max, limits.unit) });
    if (written.decimal) this.tally[written.decimal === '.' ? 'points' : 'commas'] += 1;
    return written.value;
  }

  /**
   * Line on which an eye was first counted; without a label, its own. The first row that can be counted stands: nothing in a
   * table says which of two is the better one. Rows without a label are different eyes, for two may well have the same figures.
   */
  private firstLine(label: string | null, eye: EyeSide, line: number): number {
    // Without the apostrophe that keeps a spreadsheet from reckoning with a label.
    const name = label?.replace(/^[\s']+/, '').trimEnd();
    if (!name) return line;
    const first = this.seen[eye].get(name);
    if (first === undefined) this.seen[eye].set(name, line);
    else this.tally.again += 1;
    return first ?? line;
  }

  private fault(column: OutcomeColumn, cells: readonly string[], reason: Said): Fault {
    const place = this.places[column];
    if (place === undefined) return { column, heading: null, position: null, value: '', reason };
    return { column, heading: this.headings[place]!.text, position: place + 1, value: cells[place]!, reason };
  }

  private refuse(column: OutcomeColumn, id: OutcomeWording, values: Said['values'] = {}): null {
    this.faults.push(this.fault(column, this.cells, said(id, values)));
    return null;
  }
}

/** Remembers what was found for a text, but not for endlessly many. */
function remembered<Found>(find: (text: string) => Found): (text: string) => Found {
  const known = new Map<string, Found>();
  return (text) => {
    let found = known.get(text);
    if (found === undefined) {
      found = find(text);
      if (known.size < 1000) known.set(text, found);
    }
    return found;
  };
}

function quantity(value: number, unit: string): Quantity {
  const shown = unit === 'years' ? '' : (unit as Quantity['unit']);
  return { value, unit: shown, digits: Number.isInteger(value) ? 0 : Number.isInteger(10 * value) ? 1 : 2 };
}
