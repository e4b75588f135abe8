import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { PLANNED_EYE } from '../../core/eye-planned.js';
import { decimal, dioptres, millimetres, signedDioptres } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { pencilHandsWords } from './pencil.hands.words.js';
import type { Scene } from './pencil.scene.js';
import type { Settings } from './pencil.settings.js';
import { focusText } from './pencil.speech.js';

/** Which eye is drawn, and what is left out. */
export function modelNote({ planned, meanPower }: Scene, settings: Settings, language: Language): TemplateResult {
  const { numbers } = language;
  const { lensDepth, axialLength, index } = PLANNED_EYE;
  const say = language.say(pencilHandsWords);
  const values = {
    power: dioptres(meanPower, numbers),
    depth: millimetres(lensDepth, numbers),
    lens: signedDioptres(planned.lensPower, numbers),
    focus: focusText(settings, language),
    length: millimetres(axialLength, numbers),
    index: decimal(index, 3, numbers),
    pupil: millimetres(settings.pupil, numbers),
  };
  return html`<p>${say('model', values)}</p><p>${say('first')}</p>`;
}
