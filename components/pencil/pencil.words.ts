import type { Words } from '../internal/language/language.js';

/** Texts about the bundle of light behind the eye. */
export const pencilWords = {
  part: 'pencil',
  en: {
    nameAfter: '{$eye}: bundle of light as expected after surgery',
    nameBefore: '{$eye}: bundle of light before surgery',

    light: 'light',
    front: 'front line',
    back: 'back line',
    circle: 'circle',
    retina: 'retina',
    screen: 'screen',
    point: 'focus',

    onRetina: 'on the retina',
    inFront: '{$distance} in front of the retina',
    behind: '{$distance} behind the retina',
    placed: '{$place} ({$power})',

    keyFront: 'Front line along {$direction}, {$length} long, {$place}',
    keyBack: 'Back line along {$direction}, {$length} long, {$place}',
    keyCircle: 'Circle of least confusion, {$diameter} across, {$place}',
    keyPoint: 'All light meets in one point, {$place}',
    keyRetina: 'Retina',
    keyScreen: 'Screen, {$place}. Patch: {$patch}',
    patchLong: '{$longer} × {$shorter}, longer along {$direction}',
    patchRound: 'round, {$longer} across',
    patchLine: 'a line of {$longer} along {$direction}',
    patchPoint: 'a point',

    whySteep: 'The steeper meridian, {$steep}, bends light more, so its light meets first, in the front line. A line lies across the meridian that makes it: the front line along {$front}, the back line along {$back}.',
    whyNone: 'No astigmatism: both meridians bring their light to the same place.',
    astigmatismAfter: 'Astigmatism that is expected to remain',
    astigmatismBefore: 'Astigmatism before surgery',
    stretched: 'A schematic eye with {$focus} on the retina and a pupil of {$pupil}. Widths are drawn {$times} times as large as depths. The dial shows the patch on the screen, seen from in front of the eye.',
    modelTitle: 'Which eye is drawn',
    dragHint: 'Drag to turn; drag the knob to move the screen.',

    leastBlur: 'the circle of least confusion',
    frontLine: 'the front line',
    backLine: 'the back line',
    screenControl: 'Screen',
    turnControl: 'Turn',
    tiltControl: 'Tilt',
    goTo: 'Move the screen to',
    toFront: 'Front line',
    toCircle: 'Circle',
    toBack: 'Back line',
    toRetina: 'Retina',
    turnedBy: '{$angle} from the front',
    tiltedUp: '{$angle} from above',
    tiltedDown: '{$angle} from below',

    strongest: 'More than {$most} of astigmatism is not drawn.',
  },
} as const satisfies Words;

export type PencilId = keyof typeof pencilWords.en;
