/**
 * What lives in a page: nodes and listeners by the browser's metrics; detached nodes, and kilobytes of what scripts have
 * made and of what the engine has compiled, by a heap snapshot. The engine compiles what runs often, and its metric of the
 * whole heap counts that in.
 */
export async function censusOf(cdp, page) {
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
    detached: detachedIn(heap),
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

/** The nodes of a snapshot, and where in each of them a field stands. */
function tableOf({ snapshot: { meta }, nodes }) {
  const at = (field) => {
    const index = meta.node_fields.indexOf(field);
    if (index < 0) throw new Error(`The heap snapshot does not say ${field}.`);
    return index;
  };
  const types = meta.node_types[at('type')];
  const read = { type: at('type'), size: at('self_size'), detached: at('detachedness') };
  return { nodes, width: meta.node_fields.length, types, read };
}

function kilobytes({ nodes, width, types, read }, counts) {
  let bytes = 0;
  for (let node = 0; node < nodes.length; node += width) if (counts(types[nodes[node + read.type]])) bytes += nodes[node + read.size];
  return bytes / 1000;
}

/** Nodes of a document that no document holds any more, but script does. */
function detachedIn({ nodes, width, read }) {
  let count = 0;
  for (let node = 0; node < nodes.length; node += width) if (nodes[node + read.detached] === 2) count += 1;
  return count;
}
