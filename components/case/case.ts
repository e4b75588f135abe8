import { LitElement, css, html, isServer } from 'lit';
import type { PropertyDeclaration, TemplateResult } from 'lit';
import { DEFAULTS, FIELDS, LIMITS, radiusFromDioptres } from '../../core/numbers.js';
import type { ArcMethod, BackSurface, CompletePlan, EyePlan, EyeSide, OwnFigures, PlanOutcome, RefusedValue } from '../../core/numbers.js';
import { answerForCase } from '../internal/case-context.js';
import { CaseModel, withoutPlan } from '../internal/case-model.js';
import type { KUnit } from '../internal/case-model.js';
import { property } from '../internal/property.js';
import { bareRootElsewhere } from '../internal/bare-root.js';
import { numberConverter } from '../internal/number-attribute.js';
import { readingsInDioptres } from './settings.js';
import type { GivenReading } from './settings.js';

export type { AstigChangeEvent, AstigInputEvent } from '../internal/events.js';

type Field = keyof CompletePlan;
type Reading = 'flatK' | 'steepK';

const isNumber = (field: Field): boolean => field in LIMITS;

/** The attribute of a field of the plan: `flat-k` for `flatK`. What is neither number nor word has none. */
function declarationOf(field: Field): PropertyDeclaration {
  const attribute = (isNumber(field) || typeof DEFAULTS[field] === 'string') && field.replace(/[A-Z]/g, '-$&').toLowerCase();
  return isNumber(field) ? { attribute, converter: numberConverter } : { attribute };
}

/**
 * Holds one eye and its plan, calculates, and provides both to the elements inside it. Shows nothing of its own.
 * Setting a property or attribute never fires an event. A value outside the limits is refused: the last good plan stays,
 * and `refusals` names field, value and limits.
 *
 * @tagname astig-case
 * @slot - the page's own content with the elements that show this case
 * @fires {AstigInputEvent} astig-input - while the user moves something
 * @fires {AstigChangeEvent} astig-change - once when the user lets it go
 */
export class AstigCase extends LitElement {
  static override styles = css`
    :host {
      display: contents;
    }
    :host([hidden]) {
      display: none;
    }
  `;

  // Properties and attributes of the fields of a plan, all alike; their defaults are those of a plan.
  static {
    for (const field of FIELDS) this.createProperty(field, declarationOf(field));
  }

  /** The patient's right or left eye. */
  declare eye: EyeSide;
  /** Flat keratometer reading, in `kUnit`. */
  declare flatK: number | null;
  /** Steep keratometer reading, in `kUnit`. */
  declare steepK: number | null;
  /** Unit of both readings; mm are radii, 337.5/r (ISO 10343). */
  @property({ attribute: 'k-unit' }) kUnit: KUnit = 'D';
  /** Steep meridian of the front surface, degrees. */
  declare steepMeridian: number | null;
  /** Age, years. */
  declare age: number | null;
  /** The posterior cornea: `omitted`, `typical` (0.27 D against the rule), or what it adds, D at its steep meridian, as `0.30@180`. */
  declare backSurface: BackSurface;
  /** Where on the limbus the eye is entered, degrees 0–360; none = no incision modelled. */
  declare incisionSite: number | null;
  /** Width of the incision, mm. */
  declare incisionWidth: number | null;
  /** The surgeon's own mean flattening by the incision, D; overrides the model. */
  declare incisionFlattening: number | null;
  /** Centre of the first arc, degrees 0–360. */
  declare arcSite: number | null;
  /** Length of each arc, degrees. */
  declare arcLength: number | null;
  /** Number of arcs; 2 = a pair, the second opposite. */
  declare arcCount: 0 | 1 | 2 | null;
  /** Diameter of the circle on which the arcs lie, mm. */
  declare arcZone: number | null;
  /** Depth of the arcs, µm. */
  declare arcDepth: number | null;
  /** By what the arcs are cut. */
  declare arcMethod: ArcMethod;
  /** The surgeon's own flattening by all arcs together, D; overrides the model. */
  declare arcFlattening: number | null;
  /** Thickness measured where the arc will lie, µm. */
  declare localThickness: number | null;
  /** Cylinder of a toric lens at the corneal plane, D. */
  declare lensCylinder: number | null;
  /** Meridian on which the lens is placed, i.e. which it flattens, degrees. */
  declare lensMeridian: number | null;
  /** What speaks against arcs or against the readings: `collagen`, `dry-eye`, `radial-cuts`, `ectasia`, separated by spaces. */
  declare risks: string;
  /** The surgeon's own results, D, which replace the default model everywhere: of the incision, of the arcs, or of both. */
  declare ownFigures: OwnFigures | null;
  /** Lets nobody change the plan in any element of this case. */
  @property({ type: Boolean, attribute: 'read-only', reflect: true }) readOnly = false;

  // Not `implements CaseOwner`: what that asks for is internal, so the published types would promise what they lack.
  /** @internal What the elements of this case work on. */
  readonly model: CaseModel = new CaseModel(this);

  /** Readings in dioptres whatever the unit says: the defaults, and what a plan or the user gave. The host's own setting ends that. */
  private exact: Partial<Record<Reading, number>> = {};
  private stale = true;
  #early: EyePlan | null = null;
  private writing = false;

  constructor() {
    super();
    this.#show(DEFAULTS);
    answerForCase(this, this.model);
    this.addEventListener('keydown', (event) => this.#current().moves?.byKey(event, 'astig-case'));
    this.#takeEarlyPlan();
  }

  /** The whole plan as one object, readings in dioptres; survives JSON. Always the last good one. */
  get plan(): CompletePlan {
    return this.#current().plan;
  }

  set plan(plan: EyePlan | null) {
    this.#early = null;
    // Fields that say nothing are what they are by default.
    this.#show(Object.fromEntries(FIELDS.map((field) => [field, plan?.[field] ?? DEFAULTS[field]])) as unknown as CompletePlan);
    this.stale = true;
  }

  /** What follows from the plan; current as soon as a property has been set. */
  get outcome(): PlanOutcome {
    return this.#current().outcome;
  }

  /** What of the newest settings was refused, with field, value and limits; empty when all was accepted. */
  get refusals(): readonly RefusedValue[] {
    return this.#current().refusals;
  }

  /** Takes the user's last change back. Fires no event. */
  undo(): void {
    this.#current().moves?.undo();
  }

  /** Does again what `undo` took back. Fires no event. */
  redo(): void {
    this.#current().moves?.redo();
  }

  /** Goes back to the measured eye with nothing planned. Fires no event. */
  reset(): void {
    this.plan = withoutPlan(this.plan);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#showEarlyPlan();
  }

  async adoptedCallback(): Promise<void> {
    (await import('../internal/restyle.js')).restyle(this);
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return bareRootElsewhere(this) ?? super.createRenderRoot();
  }

  override requestUpdate(name?: PropertyKey, oldValue?: unknown, options?: PropertyDeclaration): void {
    // Lit calls this synchronously on every assignment, and once without a name before the fields exist.
    if (name !== undefined && !this.writing) {
      this.stale = true;
      delete this.exact?.[name as Reading];
    }
    super.requestUpdate(name, oldValue, options);
  }

  protected override render(): TemplateResult {
    return html`<slot></slot>`;
  }

  protected override willUpdate(): void {
    // Here and not in `updated`, which no server calls: the views inside are rendered after this.
    this.#current();
    // Without a root no event of theirs would reach the case there.
    if (isServer) this.createRenderRoot();
  }

  protected override updated(): void {
    this.#current().notify();
  }

  /** @internal */
  planMoved(): void {
    this.#show(this.model.plan);
    this.requestUpdate();
  }

  /** @internal */
  unitChosen(unit: KUnit): void {
    const { plan } = this;
    this.kUnit = unit;
    this.#show(plan);
  }

  /** A plan that was set before the tag was defined hides the accessor; Lit does this for its own properties only. */
  #takeEarlyPlan(): void {
    if (!Object.hasOwn(this, 'plan')) return;
    this.#early = this.plan;
    delete (this as { plan?: unknown }).plan;
  }

  /** After the attributes, which an upgrade sets last: they would mix another eye into it. */
  #showEarlyPlan(): void {
    if (this.#early) this.plan = this.#early;
  }

  /** The model, after everything that was set has been taken in. */
  #current(): CaseModel {
    this.#showEarlyPlan();
    const { model } = this;
    model.readOnly = this.readOnly;
    if (!this.stale) return model;
    this.stale = false;
    model.kUnit = this.kUnit === 'mm' ? 'mm' : 'D';
    const { readings, refusals } = readingsInDioptres(this.kUnit, { flatK: this.#reading('flatK'), steepK: this.#reading('steepK') });
    const settings = Object.fromEntries(FIELDS.map((field) => [field, this.#setting(field)]));
    model.assign({ ...settings, ...readings }, refusals);
    return model;
  }

  /** A framework sets `age="70"` in its templates as a property; a number in a text is read as in an attribute. */
  #setting(name: Field): unknown {
    const value: unknown = this[name];
    return isNumber(name) && typeof value === 'string' ? numberConverter.fromAttribute!(value) : value;
  }

  #reading(name: Reading): GivenReading {
    const dioptres = this.exact[name];
    return dioptres === undefined ? { value: this.#setting(name) as number | null, exact: false } : { value: dioptres, exact: true };
  }

  /** Writes a plan into the properties. */
  #show(plan: CompletePlan): void {
    this.writing = true;
    for (const field of FIELDS) {
      if (field !== 'flatK' && field !== 'steepK') (this as Record<Field, unknown>)[field] = plan[field];
    }
    for (const name of ['flatK', 'steepK'] as const) {
      this.exact[name] = plan[name];
      this[name] = this.kUnit === 'mm' ? radiusOrAsIs(plan[name]) : plan[name];
    }
    this.writing = false;
  }
}

/** A radius to show; a power that is no cornea's is shown as it is, to be refused with its own number. */
function radiusOrAsIs(dioptres: number): number {
  try {
    return radiusFromDioptres(dioptres);
  } catch {
    return dioptres;
  }
}
