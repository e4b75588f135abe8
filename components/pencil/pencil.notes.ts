import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { PLANNED_EYE } from '../../core/eye-planned.js';
import type { Limits } from '../../core/numbers.js';
import { decimal, dioptres, millimetres, signedDioptres } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { refusedBox } from '../internal/notices.js';
import { pencilLateWords } from './pencil.late.words.js';
import type { Scene } from './pencil.scene.js';
import { LIMITS_HERE, WORDS } from './pencil.settings.js';
import type { Refusal, SettingName, Settings } from './pencil.settings.js';
import { focusText } from './pencil.speech.js';

/** Which eye is drawn, and what is left out. */
export function modelNote({ planned, meanPower }: Scene, settings: Settings, language: Language): TemplateResult {
  const { numbers } = language;
  const { lensDepth, axialLength, index } = PLANNED_EYE;
  const say = language.say(pencilLateWords);
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

/** What the page has set and could not be taken. */
export function refusedNote(refusals: readonly Refusal[], language: Language): ReturnType<typeof refusedBox> {
  const say = language.say(pencilLateWords);
  return refusedBox(say('refused'), refusals.map(({ setting, value }) => say('refusal', { setting, value: String(value), accepted: accepted(setting) })));
}

function accepted(setting: SettingName): string {
  const limits = (LIMITS_HERE as Partial<Record<SettingName, Limits>>)[setting];
  return [...(WORDS[setting] ?? []), ...(limits ? [`${limits.min} – ${limits.max} ${limits.unit}`] : [])].join(', ');
}
