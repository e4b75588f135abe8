import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { decimal, withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { reachOf } from './pencil.scene.js';
import type { Scene } from './pencil.scene.js';
import { LIMITS_HERE, STOPS, turned } from './pencil.settings.js';
import type { Settings, Stop } from './pencil.settings.js';
import { patchText, placeText } from './pencil.speech.js';
import { pencilWords } from './pencil.words.js';
import type { PencilId } from './pencil.words.js';

export type Movable = 'screen' | 'turn' | 'tilt';

/** What a control does: moves something, and says when it has come to rest. */
export type Mover = (name: Movable, value: number | Stop, settled: boolean) => void;

const STOP_TEXT: Record<Stop, PencilId> = { 'front-line': 'toFront', circle: 'toCircle', 'back-line': 'toBack', retina: 'toRetina' };

/** Native sliders for all that a pointer can drag, and a button for each place where the screen may stand. */
export function controls(scene: Scene, { turn, tilt }: Settings, language: Language, move: Mover, onFocus: () => void): TemplateResult {
  const say = language.say(pencilWords);
  const reach = reachOf(scene.astigmatism.magnitude, scene.circle.behind);
  const angle = (degrees: number): string => withUnit(decimal(degrees, 0, language.numbers), '°', language.numbers);
  const slider = (name: Movable, label: string, value: number, limits: Range, text: string): TemplateResult => slide(name, label, value, limits, text, move, onFocus);
  const stops = STOPS.filter((stop) => !scene.point || stop === 'retina' || stop === 'circle');
  return html`<div class="controls" part="controls">
    ${slider('screen', say('screenControl'), scene.screen.behind, reach, `${placeText(scene.screen, language)}. ${patchText(scene, language)}`)}
    <div class="stops" role="group" aria-label=${say('goTo')}>
      ${stops.map((stop) => html`<button type="button" part="button" @click=${() => move('screen', stop, true)}>${say(STOP_TEXT[stop])}</button>`)}
    </div>
    ${slider('turn', say('turnControl'), turned(turn), { min: -180, max: 180, step: 1 }, say('turnedBy', { angle: angle(turned(turn)) }))}
    ${slider('tilt', say('tiltControl'), tilt, { ...LIMITS_HERE.tilt, step: 1 }, say(tilt < 0 ? 'tiltedDown' : 'tiltedUp', { angle: angle(Math.abs(tilt)) }))}
  </div>`;
}

interface Range {
  min: number;
  max: number;
  step: number;
}

function slide(name: Movable, label: string, value: number, { min, max, step }: Range, text: string, move: Mover, onFocus: () => void): TemplateResult {
  const onMoved = (settled: boolean) => (event: Event): void => {
    // The native event would leak out of the shadow root.
    event.stopPropagation();
    move(name, Number((event.target as HTMLInputElement).value), settled);
  };
  return html`<label class="slide"><span>${label}</span>
    <input type="range" class=${name} dir="ltr" min=${shorter(min)} max=${shorter(max)} step=${step} .value=${shorter(value)} aria-valuetext=${text} @focus=${onFocus} @blur=${onFocus} @input=${onMoved(false)} @change=${onMoved(true)} />
  </label>`;
}

/** Without the digits that are nothing but rounding. */
function shorter(value: number): string {
  return String(Number(value.toFixed(4)));
}
