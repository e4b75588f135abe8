/**
 * What a plan may contain. Outside these limits a value is refused; inside them it may still draw a caution.
 * One table serves the core, the attributes and the form.
 */
export interface Limits {
  min: number;
  max: number;
  unit: string;
}

/** Limits that say whose they are: to look them up by a name, with every movement, takes longer than to compare. */
export interface FieldLimits extends Limits {
  field: string;
}

type Named<Of> = { readonly [Field in keyof Of]: Of[Field] & FieldLimits };

function named<Of extends Record<string, Limits>>(limits: Of): Named<Of> {
  for (const field in limits) Object.assign(limits[field]!, { field });
  return limits as Named<Of>;
}

/** Limits of the numeric fields of a plan. They are "assumed": wide enough for any living cornea, narrow enough to catch a slip. */
export const LIMITS = /* @__PURE__ */ named({
  /** 28–75 D is 12.05–4.5 mm: from a very flat cornea after surgery to advanced ectasia. */
  flatK: { min: 28, max: 75, unit: 'D' },
  steepK: { min: 28, max: 75, unit: 'D' },
  steepMeridian: { min: 0, max: 180, unit: '°' },
  age: { min: 1, max: 120, unit: 'years' },
  incisionSite: { min: 0, max: 360, unit: '°' },
  /** The widths for which the flattening formula was fitted. */
  incisionWidth: { min: 1.8, max: 3.5, unit: 'mm' },
  incisionFlattening: { min: -1, max: 3, unit: 'D' },
  arcSite: { min: 0, max: 360, unit: '°' },
  arcLength: { min: 15, max: 120, unit: '°' },
  arcCount: { min: 0, max: 2, unit: '' },
  arcZone: { min: 7, max: 12, unit: 'mm' },
  arcDepth: { min: 100, max: 900, unit: 'µm' },
  arcFlattening: { min: 0, max: 6, unit: 'D' },
  localThickness: { min: 300, max: 1100, unit: 'µm' },
  lensCylinder: { min: 0, max: 12, unit: 'D' },
  lensMeridian: { min: 0, max: 180, unit: '°' },
} as const satisfies Record<string, Limits>);

/** The surgeon's own results. Wide; they catch slips such as per cent for a share. */
export const OWN_LIMITS = {
  flattening: { min: -1, max: 3, unit: 'D' },
  torque: { min: -2, max: 2, unit: 'D' },
  sd: { min: 0, max: 2, unit: 'D' },
  share: { min: 0, max: 1.5, unit: '' },
  eyes: { min: 1, max: 1_000_000, unit: 'eyes' },
} as const satisfies Record<string, Limits>;

/** A measured back surface: what it may add, D. */
export const BACK_SURFACE_LIMITS: Limits = { min: 0, max: 3, unit: 'D' };
