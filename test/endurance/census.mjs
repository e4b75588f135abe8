/** ms after which nothing is under way any more. */
const SETTLED = 3000;

/**
 * What lives in a page: nodes and listeners by the browser's metrics; detached nodes, and kilobytes of what scripts have
 * made and of what the engine has compiled, by a heap snapshot. The engine compiles what runs often, and its metric of the
 * whole heap counts that in.
 */
export async function censusOf(cdp, page) {
  // A worker that nobody uses is kept for a second, and what was asked of it has to be answered first.
  await page.evaluate((ms) => new Promise((done) => setTimeout(done, ms)), SETTLED);
  // What weak references hold goes in a second and third round.
  for (let round = 0; round < 4; round += 1) {
    await cdp.send('HeapProfiler.collectGarbage');
    await page.evaluate(() => new Promise((done) => setTimeout(done, 50)));
  }
  const { metrics } = await cdp.send('Performance.getMetrics');
  const read = (name) => metrics.find((metric) => metric.name === name).value;
  const heap = tableOf(JSON.parse(await snapshot(cdp)));
  return {
    made: kilobytes(heap, (type) => !/^(code|native|hidden|synthetic)$/.test(type)),
    compiled: kilobytes(heap, (type) => type === 'code'),
    whole: read('JSHeapUsedSize') / 1000,
    nodes: read('Nodes'),
    listeners: read('JSEventListeners'),
    detached: heap.detached.length,
    names: tallyOf(heap.detached),
  };
}

async function snapshot(cdp) {
  const chunks = [];
  const take = ({ chunk }) => chunks.push(chunk);
  cdp.on('HeapProfiler.addHeapSnapshotChunk', take);
  await cdp.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  cdp.off('HeapProfiler.addHeapSnapshotChunk', take);
  return chunks.join('');
}

/**
 * The nodes of a snapshot, where in each of them a field stands, and the names of those that no document holds any more, but
 * script does. Among them are the templates that Lit has met, each once. Their contents do not count: whether the engine
 * takes one for detached depends on when it was last looked at. What else may be kept in a fragment counts by its own name.
 */
function tableOf({ snapshot: { meta }, nodes, strings }) {
  const at = (field) => {
    const index = meta.node_fields.indexOf(field);
    if (index < 0) throw new Error(`The heap snapshot does not say ${field}.`);
    return index;
  };
  const types = meta.node_types[at('type')];
  const width = meta.node_fields.length;
  const read = { type: at('type'), size: at('self_size'), detached: at('detachedness'), name: at('name') };
  const detached = [];
  for (let node = 0; node < nodes.length; node += width) {
    const name = strings[nodes[node + read.name]];
    if (nodes[node + read.detached] === 2 && name !== 'DocumentFragment') detached.push(name);
  }
  return { nodes, width, types, read, detached };
}

function kilobytes({ nodes, width, types, read }, counts) {
  let bytes = 0;
  for (let node = 0; node < nodes.length; node += width) if (counts(types[nodes[node + read.type]])) bytes += nodes[node + read.size];
  return bytes / 1000;
}

/** How often each name occurs; the engine writes attributes into it, of which the first words will do. */
function tallyOf(names) {
  const tally = {};
  for (const name of names) {
    const short = name.slice(0, 60);
    tally[short] = (tally[short] ?? 0) + 1;
  }
  return tally;
}
