/** What lives in a page: kilobytes of script, nodes and listeners by the browser's metrics, detached nodes by a heap snapshot. */
export async function censusOf(cdp, page) {
  // What weak references hold goes in a second and third round.
  for (let round = 0; round < 4; round += 1) {
    await cdp.send('HeapProfiler.collectGarbage');
    await page.evaluate(() => new Promise((done) => setTimeout(done, 50)));
  }
  const { metrics } = await cdp.send('Performance.getMetrics');
  const read = (name) => metrics.find((metric) => metric.name === name).value;
  const census = { heap: read('JSHeapUsedSize') / 1000, nodes: read('Nodes'), listeners: read('JSEventListeners') };
  return { ...census, detached: detachedIn(JSON.parse(await snapshot(cdp))) };
}

async function snapshot(cdp) {
  const chunks = [];
  const take = ({ chunk }) => chunks.push(chunk);
  cdp.on('HeapProfiler.addHeapSnapshotChunk', take);
  await cdp.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  cdp.off('HeapProfiler.addHeapSnapshotChunk', take);
  return chunks.join('');
}

/** Nodes of a document that no document holds any more, but script does. */
function detachedIn({ snapshot: { meta }, nodes }) {
  const width = meta.node_fields.length;
  const at = meta.node_fields.indexOf('detachedness');
  if (at < 0) throw new Error('The heap snapshot does not say what is detached.');
  let count = 0;
  for (let index = at; index < nodes.length; index += width) if (nodes[index] === 2) count += 1;
  return count;
}
