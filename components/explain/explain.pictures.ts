import { html, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';

/**
 * The drawings of the patient's page. Each says only what the words beside it say, so that none has to be described;
 * what differs between two of them differs in shape or line style, not only in colour.
 */

/** A drawing on its soft plate. Sizes are user units; the width is set in `em` by the class, so it grows with the text. */
export function picture(width: number, height: number, content: SVGTemplateResult, name = ''): TemplateResult {
  return html`<svg class="picture ${name}" part="picture" aria-hidden="true" viewBox="0 0 ${width} ${height}">
    <rect class="plate" width=${width} height=${height} rx="14"></rect>
    ${content}
  </svg>`;
}

/** An eye from the side, light coming from the left. */
const EYEBALL = svg`<path class="paper" d="M131 32a38 38 0 1 1 0 46"></path>
  <path class="window" d="M131 32Q112 55 131 78Q140 55 131 32z"></path>`;

/** A ball; all of the light meets at one point, on the back wall of the eye. */
export const ball = picture(
  216,
  110,
  svg`<circle class="paper" cx="36" cy="55" r="22"></circle>
    <path class="thin" d="M36 33a9 22 0 0 1 0 44M14 55a22 9 0 0 0 44 0"></path>
    ${EYEBALL}
    <path class="ray" d="M70 39H125L198 55L125 71H70M70 55H198"></path>
    <circle class="point" cx="198" cy="55" r="5"></circle>`,
  'wide',
);

/** An egg; light that enters high and low meets before the wall, light that enters at the sides on it. */
export const egg = picture(
  216,
  110,
  svg`<path class="paper" d="M8 55C8 43 20 37 33 37S64 46 64 55S46 73 33 73S8 67 8 55z"></path>
    <path class="thin" d="M33 37a7 18 0 0 1 0 36M8 55a28 8 0 0 0 56 0"></path>
    ${EYEBALL}
    <path class="ray" d="M70 37H124L164 55L194 68M70 73H124L164 55L194 42"></path>
    <path class="ray dashed" d="M70 47H123L198 55L123 63H70"></path>
    <circle class="point" cx="164" cy="55" r="5"></circle>
    <circle class="point" cx="198" cy="55" r="5"></circle>`,
  'wide',
);

/** Sun and cloud: what is likely, and not certain. */
export const weather = picture(
  120,
  110,
  svg`<path class="ray" d="M50 14V5M50 82V90M15 48H7M24 23L18 17M76 23L82 17M24 73L18 79"></path>
    <circle class="sun" cx="50" cy="48" r="25"></circle>
    <path class="paper" d="M52 92a16 16 0 0 1 1-32a22 22 0 0 1 41-5a19 19 0 0 1 2 37z"></path>`,
);

export const glasses = picture(
  120,
  110,
  svg`<rect class="window" x="14" y="44" width="38" height="30" rx="13"></rect>
    <rect class="window" x="68" y="44" width="38" height="30" rx="13"></rect>
    <path d="M52 54q8-8 16 0M14 52L9 40q-1-7 6-8M106 52l5-12q1-7-6-8"></path>`,
);

/** A warm cup: time to wait and think. */
export const cup = picture(
  120,
  110,
  svg`<path class="paper" d="M28 48H84V70a20 20 0 0 1-20 20H48A20 20 0 0 1 28 70z"></path>
    <path d="M84 54h7a11 11 0 0 1 0 22h-8M20 98H94M44 38q-6-7 0-13t0-12M66 38q-6-7 0-13t0-12"></path>`,
);

/** A list of boxes to tick, and a pencil. */
export const list = picture(
  120,
  110,
  svg`<rect class="paper" x="20" y="12" width="66" height="88" rx="5"></rect>
    <path d="M30 27h9v9h-9zM30 51h9v9h-9zM30 75h9v9h-9zM32 31l3 3l7-9"></path>
    <path class="thin" d="M48 32H76M48 56H70M48 80H62"></path>
    <path class="sun" d="M66 92l4-14L98 42l10 8L80 86z"></path>`,
);

export const phone = picture(
  120,
  110,
  svg`<rect class="paper" x="40" y="12" width="42" height="86" rx="8"></rect>
    <path d="M55 22h12M61 88v1"></path>
    <path class="window" d="M46 30h30v48h-30z"></path>
    <path class="ray" d="M30 40q-9 15 0 30M20 32q-15 23 0 46M92 40q9 15 0 30M102 32q15 23 0 46"></path>`,
);

/** Outline of an eye between its lids, for the small signs. */
const LIDS = 'M3 18Q22 2 41 18Q22 34 3 18z';

/** One sign that something is wrong, beside its words. */
function sign(content: SVGTemplateResult): TemplateResult {
  return html`<svg class="sign" aria-hidden="true" viewBox="0 0 44 36">${content}</svg>`;
}

const openEye = svg`<path class="paper" d=${LIDS}></path><circle class="point" cx="22" cy="18" r="5"></circle>`;

/** The warning signs, in the order in which they are listed. */
export const SIGNS = {
  warnPain: sign(svg`${openEye}<path class="heavy" d="M36 1l-6 8h7l-6 8"></path>`),
  warnLoss: sign(svg`<path class="dark" d=${LIDS}></path>`),
  warnFlashes: sign(svg`<path class="heavy" d="M14 3L8 17h9l-5 16M34 3l-6 14h9l-5 16"></path>`),
  warnFloaters: sign(
    svg`<circle class="paper" cx="22" cy="18" r="16"></circle>
      <path d="M12 14q4-5 7 0t7 1M18 27q5 2 9-3"></path>
      <path class="heavy" d="M28 9v0M14 22v0M33 18v0M23 20v0"></path>`,
  ),
  warnCurtain: sign(svg`<circle class="paper" cx="22" cy="18" r="16"></circle><path class="dark" d="M7 13a16 16 0 0 1 31 8Q22 22 7 13z"></path>`),
  warnRed: sign(svg`${openEye}<path class="thin" d="M8 18q2-3 4 0t4-1M36 18q-2-3-4 0t-4-1M13 12l3 3M31 12l-3 3M13 24l3-3M31 24l-3-3"></path>`),
  warnPus: sign(svg`${openEye}<path class="sun" d="M33 22q6 8 0 11q-6-3 0-11z"></path>`),
} as const;
