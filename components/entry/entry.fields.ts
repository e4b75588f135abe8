import { BACK_SURFACE_LIMITS, KERATOMETRIC_CONSTANT, LIMITS, backSurface } from '../../core/numbers.js';
import type { BackSurface, CompletePlan, Limits } from '../../core/numbers.js';
import type { KUnit } from '../internal/case-model.js';

/** Fields into which a number is typed. The two of the back surface are one field of the plan. */
export type NumberField = Exclude<keyof typeof LIMITS, 'arcCount'> | BackHalf;

type BackHalf = 'backPower' | 'backMeridian';

/** What a field belongs to, and with what it comes and goes. */
export type Group = 'eye' | 'readings' | 'backSurface' | 'incision' | 'arcs' | 'lens';

/** One numeric field of the form. */
export interface FieldSpec {
  id: NumberField;
  group: Group;
  /** The field of the plan that it is, or is half of. */
  planField: keyof CompletePlan;
  limits: Limits;
  /** Fewest and most decimals that are shown; what is stored may have more. */
  digits: readonly [fewest: number, most: number];
  /** What an empty field stands for, where it may be empty. */
  empty: 'none' | 'model' | 'age' | null;
}

const DEGREES = [0, 1] as const;
const POWER = [2, 2] as const;
const SIZE = [1, 2] as const;
const WHOLE = [0, 0] as const;

/** Every numeric field by its name. */
export const NUMBER_FIELDS: Readonly<Record<NumberField, FieldSpec>> = {
  age: field('age', 'eye', DEGREES, 'age'),
  flatK: field('flatK', 'readings', POWER),
  steepK: field('steepK', 'readings', POWER),
  steepMeridian: field('steepMeridian', 'readings', DEGREES),
  backPower: half('backPower', BACK_SURFACE_LIMITS, POWER),
  backMeridian: half('backMeridian', LIMITS.steepMeridian, DEGREES),
  incisionSite: field('incisionSite', 'incision', DEGREES),
  incisionWidth: field('incisionWidth', 'incision', SIZE),
  incisionFlattening: field('incisionFlattening', 'incision', POWER, 'model'),
  arcSite: field('arcSite', 'arcs', DEGREES),
  arcLength: field('arcLength', 'arcs', DEGREES),
  arcZone: field('arcZone', 'arcs', SIZE),
  arcDepth: field('arcDepth', 'arcs', WHOLE, 'none'),
  arcFlattening: field('arcFlattening', 'arcs', POWER, 'model'),
  localThickness: field('localThickness', 'arcs', WHOLE, 'none'),
  lensCylinder: field('lensCylinder', 'lens', POWER),
  lensMeridian: field('lensMeridian', 'lens', DEGREES),
};

/** Readings as radii: the limits in dioptres, turned round. mm. */
const RADIUS = {
  limits: { min: KERATOMETRIC_CONSTANT / LIMITS.steepK.max, max: KERATOMETRIC_CONSTANT / LIMITS.flatK.min, unit: 'mm' },
  digits: [2, 3],
} as const;

const IN_MILLIMETRES: Partial<Record<NumberField, FieldSpec>> = {
  flatK: { ...NUMBER_FIELDS.flatK, ...RADIUS },
  steepK: { ...NUMBER_FIELDS.steepK, ...RADIUS },
};

/** Whether an element is the box of a numeric field, which is called by the field's name. */
export function isNumberField(input: HTMLInputElement): input is HTMLInputElement & { name: NumberField } {
  return input.name in NUMBER_FIELDS;
}

/** The field as it is shown while readings are in `unit`. */
export function specOf(id: NumberField, unit: KUnit): FieldSpec {
  return (unit === 'mm' && IN_MILLIMETRES[id]) || NUMBER_FIELDS[id];
}

/** Between the plan's own unit and the one that is shown; the same both ways. */
export function converted(id: NumberField, unit: KUnit, value: number): number {
  return unit === 'mm' && id in IN_MILLIMETRES ? KERATOMETRIC_CONSTANT / value : value;
}

export function isMeasured(kind: BackSurface): boolean {
  return kind !== 'omitted' && kind !== 'typical';
}

/** Whether the plan has what the group describes. */
export function isPlanned(group: Group, plan: CompletePlan): boolean {
  switch (group) {
    case 'eye':
    case 'readings':
      return true;
    case 'backSurface':
      return isMeasured(plan.backSurface);
    case 'incision':
      return plan.incisionSite !== null;
    case 'arcs':
      return plan.arcCount > 0;
    case 'lens':
      return plan.lensCylinder !== null;
  }
}

/** What the plan holds for a field, in the plan's own unit; null for none. */
export function valueOf(plan: CompletePlan, id: NumberField): number | null {
  if (!isHalf(id)) return plan[id];
  if (!isMeasured(plan.backSurface)) return null;
  const { magnitude, meridian: along } = backSurface(plan.backSurface);
  return id === 'backPower' ? magnitude : along;
}

/** Whether a field is one of the two that are one field of the plan. */
export function isHalf(id: NumberField): id is BackHalf {
  return id === 'backPower' || id === 'backMeridian';
}

function field(id: Exclude<NumberField, BackHalf>, group: Group, digits: FieldSpec['digits'], empty: FieldSpec['empty'] = null): FieldSpec {
  return { id, group, planField: id, limits: LIMITS[id], digits, empty };
}

function half(id: BackHalf, limits: Limits, digits: FieldSpec['digits']): FieldSpec {
  return { id, group: 'backSurface', planField: 'backSurface', limits, digits, empty: null };
}
