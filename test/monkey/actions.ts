/** What the monkey can do. Each says what the page may expect of it, for the checks that follow. */
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { INVENTED_SLIPS, inventedResults } from '../../stories/results.js';
import { middleOf } from '../components/place.js';
import { TAGS, deepAll, focused, views } from './page.js';
import type { Playground } from './page.js';
import type { Chance } from './random.js';

export interface Deed {
  what: string;
  /** Who did it: the page fires nothing, a gesture that was given up changes nothing. */
  by: 'user' | 'page' | 'given up';
  /** Most changes that it may fire. */
  changes: number;
}

type Action = (ground: Playground, luck: Chance) => Promise<Deed | null> | Deed | null;

/** Texts as they are typed and pasted; words that would look like a fault when they are quoted are left out. */
const TYPED = ['', ' ', '0', '-0', '44', '44.25', '43,5', '7.8', '2.4', '180', '180.5', '360', '999999', '-3', '1e3', '.', '-', '٤٤', '４４', '<b>44</b>', '43 D', '90°', '😀', '\ud800', 'x'.repeat(300)];

/** Tables as they are chosen: good, with slips, and what is none. */
const TABLES = [inventedResults(40), `${inventedResults(12)}\n${INVENTED_SLIPS}`, '', 'eye,age\nright', '\ud800;\t"', 'x'.repeat(5000)];

const SETTINGS: Record<string, readonly string[]> = {
  eye: ['right', 'left', 'both'],
  'k-unit': ['D', 'mm', 'in'],
  'flat-k': ['42', '43.5', '7.9', '12', 'none', ''],
  'steep-k': ['44', '46.25', '7.5', '80', ''],
  'steep-meridian': ['0', '90', '91.5', '180', '181'],
  age: ['1', '70', '121', 'none'],
  'back-surface': ['omitted', 'typical', '0.30@180', '0.3'],
  'incision-site': ['0', '135', '360', 'none', '-1'],
  'incision-width': ['1.8', '2.75', '3.5', '4'],
  'arc-site': ['0', '90', '270.5', 'none'],
  'arc-count': ['0', '1', '2', '3'],
  'arc-length': ['15', '45', '120', '121'],
  'arc-method': ['blade', 'laser', 'saw'],
  'lens-cylinder': ['none', '0', '1.5', '12'],
  'lens-meridian': ['none', '0', '95', '180'],
  risks: ['', 'ectasia', 'dry-eye collagen', 'all'],
};

const user = (what: string, changes = 1): Deed => ({ what, by: 'user', changes });
const page = (what: string): Deed => ({ what, by: 'page', changes: 0 });

/** The mouse's number, which a page may capture once the browser has seen the mouse: asked of the mouse itself. */
let mouseId = NaN;

export async function meetMouse(): Promise<void> {
  window.addEventListener('pointermove', ({ pointerId }) => (mouseId = pointerId), { once: true, capture: true });
  for (let step = 1; Number.isNaN(mouseId) && step < 20; step += 1) {
    await sendMouse({ type: 'move', position: [5 * step, 5 * step] });
    await new Promise(requestAnimationFrame);
  }
  if (Number.isNaN(mouseId)) throw new Error('The page does not hear of the mouse.');
}

function pointer(type: string, [clientX, clientY]: readonly [number, number]): PointerEvent {
  const down = type === 'pointerdown' || type === 'pointermove';
  return new PointerEvent(type, { pointerId: mouseId, pointerType: 'mouse', isPrimary: true, button: type === 'pointermove' ? -1 : 0, buttons: down ? 1 : 0, clientX, clientY, bubbles: true, composed: true, cancelable: true });
}

function aHandle(ground: Playground, luck: Chance): { handle: Element; svg: SVGSVGElement; at: [number, number] } | null {
  const handles = deepAll<SVGElement>(ground.root, 'svg [part~="incision-handle"], svg [part~="arc-handle"], svg [part~="arc-end-handle"], svg [part~="lens-handle"], svg [part~="marker"], svg [part~="handle"]');
  if (handles.length === 0) return null;
  const handle = luck.one(handles);
  return { handle, svg: handle.closest('svg')!, at: middleOf(handle) };
}

/** Moves by events of the page: quick, and exact. The browser's own pointer takes its turn in `mouse`. */
const drag: Action = async (ground, luck) => {
  const grip = aHandle(ground, luck);
  if (!grip) return null;
  const { handle, svg, at } = grip;
  svg.dispatchEvent(pointer('pointerdown', at));
  ground.gesture();
  let place = at;
  for (let move = luck.whole(6); move >= 0; move -= 1) {
    place = [place[0] + luck.between(-60, 60), place[1] + luck.between(-60, 60)];
    svg.dispatchEvent(pointer('pointermove', place));
    if (luck.yes(0.3)) await new Promise(requestAnimationFrame);
  }
  const end = luck.next();
  if (end < 0.7) svg.dispatchEvent(pointer('pointerup', place));
  else if (end < 0.8) svg.dispatchEvent(pointer('pointercancel', place));
  else if (end < 0.9) document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  else putAway(ground, (svg.getRootNode() as ShadowRoot).host as HTMLElement);
  const how = end < 0.8 ? 'pointercancel' : end < 0.9 ? 'Escape' : 'removal';
  return end < 0.7 ? user('drag') : { what: `drag given up=${how} ${placeOf(handle)}`, by: 'given up', changes: 0 };
};

const mouse: Action = async (ground, luck) => {
  const grip = aHandle(ground, luck);
  if (!grip) return null;
  (grip.svg as Element).scrollIntoView({ block: 'center' });
  await new Promise(requestAnimationFrame);
  const bound = ([x, y]: readonly [number, number]): [number, number] => [Math.round(Math.min(window.innerWidth - 2, Math.max(1, x))), Math.round(Math.min(window.innerHeight - 2, Math.max(1, y)))];
  const box = grip.svg.getBoundingClientRect();
  await sendMouse({ type: 'move', position: bound([luck.between(box.left, box.right), luck.between(box.top, box.bottom)]) });
  await sendMouse({ type: 'down' });
  await sendMouse({ type: 'move', position: bound([luck.between(box.left, box.right), luck.between(box.top, box.bottom)]) });
  await sendMouse({ type: 'up' });
  return user(`mouse=${placeOf(grip.handle)}`, 2);
};

const keys: Action = async (_ground, luck) => {
  const key = luck.one(['Tab', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown', 'Enter', ' ', 'Escape', '4', '.', 'Backspace']);
  await sendKeys({ press: key });
  return user(`key ${key}`, 2);
};

/** Whose field it is, to find it again in a report. */
export function placeOf(field: Element): string {
  const { host } = field.getRootNode() as Partial<ShadowRoot>;
  return `${host?.localName ?? 'page'} ${field.localName} ${field.id || field.getAttribute('class') || field.getAttribute('name')}`;
}

function textField(ground: Playground, luck: Chance): HTMLInputElement | null {
  const fields = deepAll<HTMLInputElement>(ground.root, 'input:not([type=range], [type=radio], [type=checkbox], [type=file])').filter((field) => !field.disabled && !field.readOnly);
  return fields.length ? luck.one(fields) : null;
}

const type: Action = (ground, luck) => {
  const field = textField(ground, luck);
  if (!field) return null;
  field.focus({ preventScroll: true });
  const text = luck.one(TYPED);
  const pasted = luck.yes(0.4);
  field.value = pasted ? text : field.value.slice(0, luck.whole(4)) + text;
  field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true, inputType: pasted ? 'insertFromPaste' : 'insertText', data: text }));
  if (luck.yes(0.8)) field.dispatchEvent(new Event('change', { bubbles: true }));
  return user(`${pasted ? 'paste' : 'type'}=${placeOf(field)}`, 2);
};

const give: Action = (ground, luck) => {
  const fields = deepAll<HTMLInputElement>(ground.root, 'input[type=file]').filter(({ disabled }) => !disabled);
  if (fields.length === 0) return null;
  const field = luck.one(fields);
  const given = new DataTransfer();
  given.items.add(new File([luck.one(TABLES)], 'eyes.csv', { type: 'text/csv' }));
  field.files = given.files;
  field.dispatchEvent(new Event('change', { bubbles: true }));
  return user('file', 0);
};

const slide: Action = (ground, luck) => {
  const sliders = deepAll<HTMLInputElement>(ground.root, 'input[type=range]').filter(({ disabled }) => !disabled);
  if (sliders.length === 0) return null;
  const slider = luck.one(sliders);
  slider.focus({ preventScroll: true });
  slider.value = String(luck.between(Number(slider.min), Number(slider.max)));
  slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  slider.dispatchEvent(new Event('change', { bubbles: true }));
  return user(`slider=${placeOf(slider)}`, 2);
};

const press: Action = (ground, luck) => {
  // Saving a picture opens a dialogue of the browser; printing a sheet another, in which Firefox stays, whatever the language of the button.
  const buttons = deepAll<HTMLElement>(ground.root, 'button:not([part~="picture-bar"] *, .bar *), summary, input[type=radio], input[type=checkbox]').filter(
    (button) => !(button as HTMLButtonElement).disabled && button.checkVisibility() && !/svg|png|print|save|copy/i.test(`${button.textContent} ${button.getAttribute('part')} ${button.className} ${button.dataset.picture ?? ''}`),
  );
  if (buttons.length === 0) return null;
  const button = luck.one(buttons);
  const told = (button.textContent || button.className || (button as HTMLInputElement).value).trim();
  button.focus({ preventScroll: true });
  button.click();
  return user(`click ${button.localName}=${told.slice(0, 24)}`, 2);
};

const select: Action = (ground, luck) => {
  const lists = deepAll<HTMLSelectElement>(ground.root, 'select').filter(({ disabled }) => !disabled);
  if (lists.length === 0) return null;
  const list = luck.one(lists);
  list.focus({ preventScroll: true });
  list.selectedIndex = luck.whole(list.options.length);
  list.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  list.dispatchEvent(new Event('change', { bubbles: true }));
  return user(`select=${placeOf(list)}`, 2);
};

const shortcut: Action = (ground, luck) => {
  const target = luck.one([...views(ground), ground.eye]);
  target.dispatchEvent(new KeyboardEvent('keydown', { key: luck.one(['z', 'y', 'Z']), ctrlKey: true, shiftKey: luck.yes(0.3), bubbles: true, composed: true, cancelable: true }));
  return user('undo by key', 1);
};

const set: Action = ({ eye }, luck) => {
  const name = luck.one(Object.keys(SETTINGS));
  const text = luck.one(SETTINGS[name]!);
  eye.setAttribute(name, text);
  return page(`${name}=${text}`);
};

/** Puts things right again, or the monkey would soon sit before a case that refuses everything. */
const mend: Action = ({ eye }, luck) => {
  eye.plan = { eye: luck.one(['right', 'left'] as const), flatK: 42, steepK: 42 + luck.between(0, 4), steepMeridian: luck.between(0, 180), age: 70, incisionSite: luck.between(0, 360), arcSite: luck.between(0, 360), arcCount: luck.one([0, 1, 2] as const), ...(luck.yes(0.5) ? { lensCylinder: 1.5, lensMeridian: luck.between(0, 180) } : {}) };
  if (eye.kUnit !== 'D' && eye.kUnit !== 'mm') eye.kUnit = 'D';
  return page('plan');
};

const call: Action = ({ eye }, luck) => {
  const name = luck.one(['undo', 'redo', 'reset'] as const);
  eye[name]();
  return page(`${name}()`);
};

const surroundings: Action = ({ root, eye }, luck) => {
  const kind = luck.whole(6);
  if (kind === 0) root.lang = luck.one(['en', 'de', 'fr', 'es', 'ar', 'zh', 'nl', '']);
  else if (kind === 1) root.dir = luck.one(['ltr', 'rtl', 'auto']);
  else if (kind === 2) root.style.colorScheme = luck.one(['light', 'dark', 'light dark']);
  else if (kind === 3) root.style.width = luck.one(['', '320px', '700px', '0px', '1200px']);
  else if (kind === 4) root.style.fontSize = luck.one(['', '200%', '10px']);
  else eye.readOnly = luck.yes(0.2);
  return page('surroundings');
};

function putAway(ground: Playground, view: HTMLElement): void {
  if (!view.isConnected || !(TAGS as readonly string[]).includes(view.localName)) return;
  view.remove();
  ground.away.push(view);
}

const removal: Action = (ground, luck) => {
  const present = views(ground);
  if (luck.yes(0.1)) {
    ground.eye.remove();
    ground.root.prepend(ground.eye);
    return page('case again');
  }
  if (present.length > 2 && luck.yes(0.4)) {
    putAway(ground, luck.one(present));
    return page('remove');
  }
  // One of those taken out, or a new one, in any place.
  const back = luck.yes(0.8) ? ground.away.shift() : undefined;
  const view = back ?? (present.length < 14 ? document.createElement(luck.one(TAGS)) : luck.one(present));
  (view.hasAttribute('for') ? ground.root : ground.inside).insertBefore(view, null);
  return page('add');
};

const wait: Action = async (_ground, luck) => {
  for (let frame = luck.whole(4); frame >= 0; frame -= 1) await new Promise(requestAnimationFrame);
  return page('wait');
};

/** How often each comes, by weight. */
const WEIGHTS: readonly [Action, number][] = [[drag, 20], [mouse, 1], [keys, 3], [type, 14], [give, 2], [slide, 10], [press, 8], [select, 4], [shortcut, 4], [set, 10], [mend, 5], [call, 3], [surroundings, 4], [removal, 6], [wait, 4]];

const LIST = WEIGHTS.flatMap(([action, weight]) => Array.from({ length: weight }, () => action));

/** Does something, and says what. */
export async function act(ground: Playground, luck: Chance): Promise<Deed> {
  for (;;) {
    const action = luck.one(LIST);
    ground.doing = action.name;
    const deed = await action(ground, luck);
    if (deed) return deed;
  }
}

export { focused };
