import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Caution, CompletePlan, Cyclotorsion, PlanOutcome } from '../../core/numbers.js';
import { cautionText } from '../internal/caution.js';
import { angle, capital, clockText, decimal, dioptres, isolated, meridianText, percent, siteText, withUnit } from '../internal/format.js';
import type { Language, Say } from '../internal/language/language.js';
import { eyeId, sharedWords } from '../internal/words.js';
import { LIMBUS_WIDTH, fromMark } from './sheet.plan.js';
import type { Item } from './sheet.plan.js';
import type { SheetId } from './sheet.words.js';

/** All that the sheet is made of. */
export interface Sheet {
  plan: CompletePlan;
  outcome: PlanOutcome;
  items: readonly Item[];
  /** Readings of the reference mark, degrees. */
  seated: number | null;
  lying: number | null;
  torsion: Cyclotorsion | null;
  language: Language;
  say: Say<SheetId>;
}

/** An empty line to write on. */
const BLANK = html`<span class="blank" part="blank"></span>`;

/** Names and values one under the other; what is not known is an empty line. */
function list(rows: readonly (readonly [name: string, value: string | null])[]): TemplateResult {
  return html`<dl>${rows.map(([name, value]) => html`<div><dt>${name}</dt><dd>${value ?? BLANK}</dd></div>`)}</dl>`;
}

/** The gravest cautions, and what is to be thought about: a note is for the desk. */
export function printed({ outcome }: Pick<Sheet, 'outcome'>): Caution[] {
  return outcome.cautions.filter(({ level }) => level !== 'note');
}

export function cautions(sheet: Sheet): TemplateResult | typeof nothing {
  const { language } = sheet;
  const shown = printed(sheet);
  if (shown.length === 0) return nothing;
  const shared = language.say(sharedWords);
  return html`<ul class="cautions">
    ${shown.map((caution) => html`<li class=${caution.level} part="caution" data-id=${caution.id}><strong>${shared(caution.level)}:</strong> ${cautionText(caution, language)}</li>`)}
  </ul>`;
}

export function marks({ say }: Sheet): TemplateResult {
  return html`<div part="marks"><h3>${say('marks')}</h3><p>${say('marksHow')} <svg class="sample" viewBox="0 0 12 12" aria-hidden="true"><path class="solid" d="M0,6L12,0V12Z"></path></svg></p></div>`;
}

export function depth(sheet: Sheet): TemplateResult | typeof nothing {
  const { plan, say, language: { numbers } } = sheet;
  const { arcCount, arcDepth, localThickness, arcMethod } = plan;
  if (arcCount === 0) return nothing;
  const micrometres = (value: number | null): string | null => (value === null ? null : withUnit(decimal(value, 0, numbers), 'µm', numbers));
  const share = arcDepth === null || localThickness === null ? null : percent(arcDepth / localThickness, numbers);
  const rows: [string, string | null][] = [[say('depthSet'), micrometres(arcDepth)], [say('thickness'), micrometres(localThickness)], [say('share'), share]];
  // One thickness is given: that of one place. The other end of the eye has its own.
  if (arcCount === 2) rows.push([say('thicknessSecond'), null]);
  return html`<div part="depth"><h3>${say(arcMethod === 'laser' ? 'depthLaser' : 'depthBlade')}</h3>
    ${list(rows)} ${rows.some(([, value]) => value === null) ? html`<p>${say('fillIn')}</p>` : nothing}</div>`;
}

export function torsion({ seated, lying, torsion: turned, say, language: { numbers } }: Sheet, usual: number): TemplateResult {
  const reading = (value: number | null): string | null => (value === null ? null : siteText(value, numbers));
  return html`<div part="torsion"><h3>${say('torsion')}</h3>
    ${list([[say('markPut'), reading(seated)], [say('markSeen'), reading(lying)], [say('turned'), turned && turnText(turned, say, numbers)]])}
    ${turned?.unusual ? html`<p><strong>${say('torsionUnusual', { usual: angle(usual, numbers) })}</strong></p>` : nothing}
    <p>${say(turned ? 'torsionUse' : 'torsionAdd')}</p></div>`;
}

/** `+4° counter-clockwise, towards the temple`. */
function turnText({ turn, direction }: Cyclotorsion, say: Say<SheetId>, numbers: string): string {
  if (direction === 'none') return angle(0, numbers);
  const signed = isolated((turn > 0 ? '+' : '−') + angle(Math.abs(turn), numbers), numbers);
  const way = say(turn > 0 ? 'counterclockwise' : 'clockwise');
  return new Intl.ListFormat(numbers, { type: 'unit', style: 'short' }).format([`${signed} ${way}`, say(direction)]);
}

/** What is to be done where. With a turn of the eye it has the planned degrees and those to use lying. */
export function table(sheet: Sheet): TemplateResult {
  const { items, torsion: turned, say } = sheet;
  const heads: SheetId[] = ['what', 'planned', ...(turned ? ['lying' as const] : []), 'clock', 'ends', 'along', 'chord', 'fromMark'];
  return html`<div class="wrap" tabindex="0" role="group" aria-label=${say('planned')}><table part="table">
    <thead><tr>${heads.map((id) => html`<th scope="col">${say(id)}</th>`)}</tr></thead>
    <tbody>${items.map((item) => row(item, sheet))}</tbody>
  </table></div>`;
}

function row({ number, kind, planned, lying, ends, along, chord }: Item, { plan, torsion: turned, say, language }: Sheet): TemplateResult {
  const { numbers } = language;
  const degrees = kind === 'lens' ? meridianText : siteText;
  const millimetres = (value: number | null): string => (value === null ? '–' : withUnit(decimal(value, 1, numbers), 'mm', numbers));
  const shared = language.say(sharedWords);
  const name = kind === 'lens' ? say('lensOf', { power: dioptres(plan.lensCylinder!, numbers) }) : kind === 'secondArc' ? say('secondArc') : capital(shared(kind));
  return html`<tr data-kind=${kind}>
    <th scope="row"><span class="number">${number}</span> ${name}</th>
    <td>${turned ? degrees(planned, numbers) : strong(degrees(planned, numbers))}</td>
    ${turned ? html`<td>${strong(degrees(lying, numbers))}</td>` : nothing}
    <td class="whole">${clockText(Math.round(lying), language)}</td>
    <td class="whole">${ends === null ? '–' : isolated(`${siteText(Math.round(ends[0]), numbers)} – ${siteText(Math.round(ends[1]), numbers)}`, numbers)}</td>
    <td class="whole">${millimetres(along)}</td>
    <td class="whole">${millimetres(chord)}</td>
    <td>${markText(planned, say, numbers)}</td>
  </tr>`;
}

function strong(text: string): TemplateResult {
  return html`<strong>${text}</strong>`;
}

function markText(planned: number, say: Say<SheetId>, numbers: string): string {
  const { mark, next, length } = fromMark(planned);
  const [at, towards] = [siteText(mark, numbers), siteText(next, numbers)];
  return length < 0.05 ? say('onMark', { mark: at }) : say('besideMark', { length: withUnit(decimal(length, 1, numbers), 'mm', numbers), mark: at, next: towards });
}

/** Boxes to tick and lines to sign on. Nothing that a screen would remember. */
export function checks({ plan, say, language }: Sheet): TemplateResult {
  const eye = language.say(sharedWords)(eyeId(plan.eye));
  const boxes = [say('checkPatient'), say('checkSide', { eye }), ...(plan.lensCylinder ? [say('checkLens')] : []), say('checkPlan')];
  return html`<div class="checks" part="checks"><h3>${say('checks')}</h3>
    <ul class="boxes">${boxes.map((text) => html`<li><span class="box"></span>${text}</li>`)}</ul>
    <ul class="signatures">${(['markedBy', 'surgeon', 'date'] as const).map((id) => html`<li><span>${say(id)}</span>${BLANK}</li>`)}</ul></div>`;
}

export function footnotes({ plan, say, language }: Sheet): TemplateResult {
  const millimetres = (value: number): string => withUnit(decimal(value, 1, language.numbers), 'mm', language.numbers);
  return html`<p class="foot">${say('dial')} ${say('millimetres', { limbus: millimetres(LIMBUS_WIDTH), zone: millimetres(plan.arcZone) })}</p>
    <p class="foot" part="estimate"><strong>${language.say(sharedWords)('estimate')}</strong></p>`;
}
