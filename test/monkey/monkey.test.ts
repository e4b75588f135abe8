/** A user without a plan: see `run.mjs`. What must hold holds after every single action. */
import { executeServerCommand } from '@web/test-runner-commands';
import { evaluatePlan } from '../../core/index.js';
import type { AstigChangeEvent, AstigInputEvent } from '../../components/internal/events.js';
import { act, meetMouse, placeOf } from './actions.js';
import type { Deed } from './actions.js';
import { FAULT, deepAll, focused, playground, views } from './page.js';
import type { Playground } from './page.js';
import { chance } from './random.js';

/** After how many actions it says that it is still at work. */
const TOLD_EVERY = 1000;

/** Longer than anything takes, ms; a browser that has stopped answering is told apart from a slow one. */
const LATE = 60_000;

const { actions, seed } = await executeServerCommand<{ actions: number; seed: number }, object>('monkey', {});

describe(`a monkey with the seed ${seed}`, () => {
  const troubles: string[] = [];
  const note = (event: ErrorEvent | PromiseRejectionEvent): void => {
    const error: unknown = event instanceof ErrorEvent ? event.error ?? event.message : event.reason;
    // The browser's remark that a size changed while sizes were told is no exception.
    if (String(error).includes('ResizeObserver loop')) return;
    troubles.push(error instanceof Error ? `${error.message}\n${error.stack}` : String(error));
    event.preventDefault();
  };
  window.addEventListener('error', note, true);
  window.addEventListener('unhandledrejection', note, true);
  window.print = () => {};

  it(`does ${actions} things, and nothing breaks`, async function run() {
    this.timeout(0);
    await meetMouse();
    const luck = chance(seed);
    const ground = playground();
    const log = listen(ground);
    await settled(ground);
    const last: string[] = [];
    const counts: Record<string, number> = {};
    for (let index = 0; index < actions; index += 1) {
      const before = { plan: JSON.stringify(ground.eye.plan), focus: focused(), ending: Number(log.open) };
      ground.gesture = () => {
        log.inputs = 0;
        log.changes = 0;
        log.sources = [];
        before.plan = JSON.stringify(ground.eye.plan);
      };
      ground.gesture();
      const deed = await soon(act(ground, luck), () => `Action ${index} with the seed ${seed}, ${ground.doing}, does not end. Before it: ${last.join(', ')}`);
      const [kind] = deed.what.split('=');
      counts[kind!] = (counts[kind!] ?? 0) + 1;
      last.push(deed.what);
      if (last.length > 12) last.shift();
      await soon(settled(ground), () => `What action ${index} with the seed ${seed} asked for is not drawn: ${last.join(', ')}`);
      const wrong = [...troubles, ...log.wrong, ...faults(ground, deed, log, before)];
      if (wrong.length > 0) throw new Error(`After action ${index} with the seed ${seed} (${last.join(', ')}): ${wrong.slice(0, 3).join('; ')}`);
      if (deed.by === 'given up') log.open = false;
      if ((index + 1) % TOLD_EVERY === 0) await executeServerCommand('monkey', { done: index + 1 });
    }
    console.log(`monkey, seed ${seed}: ${actions} actions (${Object.entries(counts).map(([what, count]) => `${what} ${count}`).join(', ')}), ${log.all} events`);
  });
});

async function soon<Result>(work: Promise<Result>, complaint: () => string): Promise<Result> {
  let timer = 0;
  const late = new Promise<never>((_, reject) => (timer = window.setTimeout(() => reject(new Error(complaint())), LATE)));
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}

interface Log {
  inputs: number;
  changes: number;
  all: number;
  /** Of whom the events of the last action were. */
  sources: string[];
  /** Whether the plan has been moved and not yet let go: typing ends with what comes next, such as the loss of the focus. */
  open: boolean;
  wrong: string[];
}

function listen({ root, eye }: Playground): Log {
  const log: Log = { inputs: 0, changes: 0, all: 0, sources: [], open: false, wrong: [] };
  const seen = (event: AstigInputEvent | AstigChangeEvent): void => {
    log.all += 1;
    log.sources.push(event.source);
    log.open = event.type === 'astig-input';
    if (event.type === 'astig-input') log.inputs += 1;
    else log.changes += 1;
    if (event.plan !== eye.plan || event.outcome !== eye.outcome) log.wrong.push(`${event.type} of ${event.source} tells of another plan than the case`);
  };
  root.addEventListener('astig-input', seen);
  root.addEventListener('astig-change', seen);
  return log;
}

/** Until what is asked for is drawn; what comes late in a frame is seen after the next action. */
async function settled(ground: Playground): Promise<void> {
  await ground.eye.updateComplete;
  for (const view of views(ground) as (HTMLElement & { updateComplete: Promise<boolean> })[]) await view.updateComplete;
}

function faults(ground: Playground, deed: Deed, log: Log, before: { plan: string; focus: Element | null; ending: number }): string[] {
  return [...ofFigures(ground), ...ofEvents(ground, deed, log, before), ...onScreen(ground), ...ofFocus(deed, before.focus)];
}

function ofFigures({ eye }: Playground): string[] {
  const { plan, outcome } = eye;
  const fresh = evaluatePlan(plan);
  if (JSON.stringify(outcome) !== JSON.stringify(fresh)) return ['the outcome is not that of the plan'];
  if (outcome.chanceWithin(0.5) !== fresh.chanceWithin(0.5)) return ['the chance is not that of the plan'];
  return /:null/.test(JSON.stringify(outcome).replaceAll('"source":null', '')) && hasHole(outcome) ? ['a figure is not finite'] : [];
}

function hasHole(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  return typeof value === 'object' && value !== null && Object.values(value).some(hasHole);
}

function ofEvents({ eye }: Playground, { by, what, changes }: Deed, log: Log, { plan: before, ending }: { plan: string; ending: number }): string[] {
  const found: string[] = [];
  if (by === 'page' && (log.inputs > 0 || log.changes > ending)) found.push(`the page's own ${what} fired ${log.inputs} inputs and ${log.changes} changes (${log.sources.join(', ')})`);
  if (log.changes > changes + ending) found.push(`${log.changes} changes of one action`);
  if (by === 'given up') {
    if (log.changes > 0) found.push('what was given up fired a change');
    if (JSON.stringify(eye.plan) !== before) found.push(`what was given up left its trace in the plan: ${before} became ${JSON.stringify(eye.plan)}`);
  }
  if (by === 'user' && what === 'drag' && log.changes === 0 && JSON.stringify(eye.plan) !== before) found.push('a drag moved the plan and fired no change');
  return found;
}

function onScreen({ root, eye }: Playground): string[] {
  const found: string[] = [];
  for (const view of deepAll(root, '*')) {
    const inner = view.shadowRoot?.innerHTML;
    const fault = inner === undefined ? null : FAULT.exec(inner);
    if (fault) found.push(`${view.localName} shows ${fault[0]}: …${inner!.slice(Math.max(0, fault.index - 80), fault.index + 40)}…`);
  }
  const english = root.lang === '' || root.lang === 'en';
  for (const summary of english ? root.querySelectorAll('astig-case astig-summary') : []) {
    const figure = eye.outcome.after.magnitude.toFixed(2);
    if (!summary.shadowRoot!.textContent!.includes(figure)) found.push(`the summary does not say ${figure}`);
  }
  return found;
}

/** A user's own action must leave the focus where somebody can find it. */
function ofFocus({ by, what }: Deed, before: Element | null): string[] {
  if (by !== 'user' || what.startsWith('key') || what.startsWith('mouse') || !before?.isConnected) return [];
  // A field that the page has switched off loses the focus with the next frame, which is not the next action's doing.
  if (before.matches(':disabled') || !before.checkVisibility()) return [];
  return focused() === null ? [`${what} lost the focus of ${placeOf(before)}`] : [];
}
