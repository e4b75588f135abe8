/** What a DevTools trace says of a span of time: where the page's main thread spent it, and its longest tasks. */

const CATEGORIES = ['-*', 'toplevel', 'v8', 'devtools.timeline', 'disabled-by-default-devtools.timeline'];

/** Kinds of work by the names of trace events. What is inside another event counts as its own kind. */
const KINDS = {
  script: /^(EventDispatch|FunctionCall|RunMicrotasks|FireAnimationFrame|TimerFire|EvaluateScript|v8\.\w+|V8\..*)$/,
  collection: /^(MinorGC|MajorGC|V8\.GC.*|BlinkGC\..*)$/,
  style: /^UpdateLayoutTree$/,
  layout: /^Layout$/,
  // Steps from the laid-out page to what the compositor takes over.
  paint: /^(PrePaint|Paint|Layerize|UpdateLayer|Commit|CompositeLayers)$/,
};
const RASTER = /^(RasterTask|ImageDecodeTask)$/;
/** The end of the work on one frame. */
const FRAME = 'Commit';
const TASK = /^(RunTask|ThreadControllerImpl::RunTask)$/;

/**
 * Times are the thread's own, in ms; the trace itself adds some. `moves` is how often a pointer reached the page, `frames`
 * how often the page was drawn in a second of it, `layouts` how often it was laid out.
 */
export async function traceSummary(page, action) {
  await page.tracing.start({ categories: CATEGORIES });
  await action();
  const { traceEvents } = JSON.parse(Buffer.from(await page.tracing.stop()).toString('utf8'));
  const main = mainThread(traceEvents);
  const spans = traceEvents.filter(({ ph }) => ph === 'X');
  const onMain = spans.filter(({ pid, tid }) => pid === main.pid && tid === main.tid);
  const tasks = onMain.filter(({ name }) => TASK.test(name)).map(milliseconds);
  const raster = spans.filter(({ name, pid }) => pid === main.pid && RASTER.test(name)).reduce((total, span) => total + milliseconds(span), 0);
  const frames = onMain.filter(({ name, ts }) => name === FRAME && ts >= main.from && ts <= main.to).length;
  const perSecond = (1e6 * frames) / (main.to - main.from);
  return { moves: main.count, frames: perSecond, longest: Math.max(...tasks), over: (limit) => tasks.filter((task) => task > limit).length, raster, ...ownTimes(onMain) };
}

function milliseconds({ tdur, dur }) {
  return (tdur ?? dur ?? 0) / 1000;
}

/** Time of each kind without what is nested in it. */
function ownTimes(spans) {
  const totals = { script: 0, collection: 0, style: 0, layout: 0, paint: 0, layouts: 0 };
  const stack = [];
  for (const span of spans.toSorted((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0))) {
    while (stack.length > 0 && stack.at(-1).end <= span.ts) stack.pop();
    const kind = kindOf(span.name) ?? stack.at(-1)?.kind ?? null;
    const outer = stack.at(-1);
    const time = milliseconds(span);
    if (outer?.kind) totals[outer.kind] -= time;
    if (kind) totals[kind] += time;
    if (span.name === 'Layout') totals.layouts += 1;
    stack.push({ end: span.ts + (span.dur ?? 0), kind });
  }
  return totals;
}

function kindOf(name) {
  if (KINDS.collection.test(name)) return 'collection';
  return Object.keys(KINDS).find((kind) => KINDS[kind].test(name));
}

/** The thread that handled the pointer. */
function mainThread(events) {
  const counts = new Map();
  for (const { name, args, pid, tid, ts } of events) {
    if (name !== 'EventDispatch' || args.data?.type !== 'pointermove') continue;
    const key = `${pid} ${tid}`;
    const { count, from, to } = counts.get(key) ?? { count: 0, from: ts, to: ts };
    counts.set(key, { pid, tid, count: count + 1, from: Math.min(from, ts), to: Math.max(to, ts) });
  }
  const [most] = [...counts.values()].sort((a, b) => b.count - a.count);
  if (!most) throw new Error('The trace has no pointermove: the drag did not reach the page.');
  return most;
}
