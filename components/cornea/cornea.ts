import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { AstigDrawing } from '../internal/drawing.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { lastOf } from '../internal/last.js';
import { Later } from '../internal/later.js';
import { isPlanned } from '../internal/planned.js';
import { property } from '../internal/property.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { placeWords } from '../internal/place.words.js';
import { sharedWords } from '../internal/words.js';
import type { Cornea } from './cornea.hands.js';
import type { MapPower, MapState } from './cornea.map.field.js';
import { corneaKey } from './cornea.key.js';
import { layoutCornea } from '../internal/dial-layout.js';
import type { CorneaLayout } from '../internal/dial-layout.js';
import { drawCornea } from './cornea.drawing.js';
import { corneaStyles } from './cornea.styles.js';
import { describe, nameOf } from './cornea.speech.js';
import { corneaWords } from './cornea.words.js';
import { VIEWPOINTS, viewpointTurn } from '../internal/viewpoint.js';
import type { Viewpoint } from '../internal/viewpoint.js';

/**
 * The eye from the front: limbus, degree ring, clock hours, steep and flat meridian before, incision, relaxing arcs, lens
 * axis, and the steep meridian of what is left. Everything planned can be moved by pointer and keyboard.
 *
 * @tagname astig-cornea
 * @csspart limbus - the edge of the cornea
 * @csspart ring - ticks and figures of the dial
 * @csspart steep-before - steep meridian as measured
 * @csspart flat-before - flat meridian as measured
 * @csspart steep-after - steep meridian of what is expected to be left
 * @csspart steep-spread - sector that holds half of the remaining steep meridians of eyes like this
 * @csspart incision - the incision, to scale
 * @csspart arc - a relaxing arc, to scale
 * @csspart lens-axis - the meridian on which the toric lens is placed
 * @csspart map - colours and contours of the power
 * @csspart map-point - the point whose power is read
 * @csspart incision-handle - moves the incision
 * @csspart arc-handle - moves the arcs
 * @csspart arc-end-handle - sets the length of the arcs
 * @csspart lens-handle - turns the lens
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 * @cssprop [--astig-size=34rem] - greatest width of the drawing
 * @fires {AstigInputEvent} astig-input - while the user moves something
 * @fires {AstigChangeEvent} astig-change - once when the user lets it go
 */
export class AstigCornea extends AstigDrawing {
  static override styles = [tokens, drawingStyles, sourceStyles, corneaStyles];

  /** From where the eye is seen: `facing`, `above` (surgeon at the head) or `temporal` (surgeon at the side). */
  @property() viewpoint: Viewpoint = 'facing';

  /** Leaves out the sector in which the remaining steep meridian may lie. */
  @property({ type: Boolean, attribute: 'hide-spread' }) hideSpread = false;

  /** Puts a map of the power beneath the drawing: `before`, `after` (the same as empty) or `difference` (after minus before). */
  @property() map?: MapState | '' | null;

  /** Which power the map shows: `axial` (the same as empty) or `tangential`. */
  @property({ attribute: 'map-power' }) mapPower?: MapPower;

  readonly #hands = new Later(this, async () => new (await import('./cornea.hands.js')).CorneaHands(this, this.#worked()));
  readonly #map = new Later(this, async () => new (await import('./cornea.map.js')).CorneaMap(this, this.#worked()));
  readonly #layoutOf = lastOf(layoutCornea);

  protected override render(): TemplateResult {
    const { model, language } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const say = language.say(corneaWords);
    const { plan, outcome } = model;
    const layout = this.#layout();
    const viewpoint = this.#knownViewpoint;
    const hands = this.editable ? this.#hands.need() : null;
    const map = this.map != null ? this.#map.need() : null;
    const { half, halfHeight } = layout;
    return html`<figure class="plate" tabindex="-1" aria-label=${nameOf(plan, viewpoint, language)}>
      <span class="probe"></span>
      <svg
        role="img"
        aria-label=${describe(plan, outcome, viewpoint, language)}
        font-size=${layout.size}
        viewBox="${-half} ${-halfHeight} ${2 * half} ${2 * halfHeight}"
      >
        ${drawCornea(plan, outcome, layout, this.hideSpread, map?.draw())} ${map?.figures()} ${hands?.handles()}
      </svg>
      ${hands?.sliders()} ${map?.legend()}
      ${corneaKey(plan, outcome, language)}
      <figcaption class="quiet">${say(`${viewpoint}Caption`)} <span class="hint">${this.editable && isPlanned(plan) ? say('hint') : nothing}</span>
        ${this.hideSpread ? nothing : html`${say('spreadHint')} ${this.source.button({ figure: 'spread' }, shared('source'), shared('sourceOfSpread'))}`}
      </figcaption>
      ${this.pictureRow()}
    </figure>
    ${this.source.render()}`;
  }

  /** What the hands see of the drawing: what it is when they look, not what it was when they came. */
  #worked(): Cornea {
    return {
      language: this.language,
      model: () => this.model,
      editable: () => this.editable,
      surface: () => this.renderRoot.querySelector<SVGSVGElement>('.plate > svg'),
      layout: () => this.#layout(),
    };
  }

  get #knownViewpoint(): Viewpoint {
    return VIEWPOINTS.includes(this.viewpoint) ? this.viewpoint : 'facing';
  }

  #layout(): CorneaLayout {
    const { width, font, family } = this.size;
    const { eye } = this.model!.plan;
    const place = this.language.say(placeWords);
    const title = this.language.say(sharedWords)(eye);
    return this.#layoutOf({ width, font, family, turn: viewpointTurn(this.#knownViewpoint, eye), eye, title, sides: { temporal: place('temporal'), nasal: place('nasal') } });
  }
}
