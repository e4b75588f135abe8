import type { EyeSide, StepSource } from '../../core/numbers.js';
import type { Words } from './language/language.js';

/** Words that several elements share. */
export const sharedWords = {
  part: 'shared',
  en: {
    right: 'Right eye',
    left: 'Left eye',
    rightEye: 'right eye',
    leftEye: 'left eye',
    with: 'with the rule',
    against: 'against the rule',
    oblique: 'oblique',
    stop: 'Stop',
    think: 'Think',
    note: 'Note',
    backSurface: 'back surface',
    incision: 'incision',
    arc: 'arc',
    arcs: 'arcs',
    lens: 'toric lens',
    years: 'years',
    eyes: 'eyes',
    quoted: '“{$text}”',
    noCase: 'Nothing to show yet: this needs an astig-case around it, or its id in “for”.',
    asking: 'Not shown until the question is answered.',
    source: 'Source',
    sourceOfSpread: 'Source of the uncertainty',
    whereFrom: 'Where this comes from',
    close: 'Close',
    estimate: 'Estimates for teaching and discussion. The surgeon’s own measurements, local rules and licensed judgement decide.',
  },
} as const satisfies Words;

/** The eye in the middle of a sentence. */
export function eyeId(eye: EyeSide): 'rightEye' | 'leftEye' {
  return eye === 'right' ? 'rightEye' : 'leftEye';
}

/** What a step is called: in the singular where one arc is planned. */
export function stepId(source: StepSource, arcCount: number): StepSource | 'arc' {
  return source === 'arcs' && arcCount === 1 ? 'arc' : source;
}
