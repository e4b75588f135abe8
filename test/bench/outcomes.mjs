/** How long 100 000 eyes take: the reading, and the figures of a series beside two general libraries in the same run. */
import * as math from 'mathjs';
import Papa from 'papaparse';
import * as simple from 'simple-statistics';
import { loaded } from './page.mjs';

export const title = 'Own results of 100 000 eyes, milliseconds';

const EYES = 100_000;
const RUNS = 7;

export async function run() {
  const { readTable, eyeResult, ownFigures, summarise, vectorsOf } = await loaded('core/outcomes.ts');
  const { inventedResults } = await loaded('stories/results.ts');
  const text = inventedResults(EYES);
  const table = readTable(text);
  const results = table.records.map((record) => eyeResult(record));
  const vectors = vectorsOf(results, 'induced');
  check(summarise(vectors), bySimple(vectors), byMath(vectors));

  const whole = median(RUNS, () => summarise(vectors));
  const beside = { simple: median(RUNS, () => bySimple(vectors)), math: median(RUNS, () => byMath(vectors)) };
  const read = median(RUNS, () => readTable(text));
  const parsed = median(RUNS, () => Papa.parse(text, { delimiter: ';' }));
  const part = 'centroid, covariance, mean and median magnitude';
  return [
    { what: `outcome summary, with ellipses, test, robust centres, shares; beside: ${part}, simple-statistics`, value: whole, beside: beside.simple, ratio: whole / beside.simple },
    { what: `the same; beside: ${part}, mathjs`, value: whole, beside: beside.math, ratio: whole / beside.math },
    { what: 'table read and checked; beside: cells only, papaparse', value: read, beside: parsed, ratio: read / parsed },
    { what: 'every eye judged', value: median(3, () => table.records.map((record) => eyeResult(record))) },
    { what: 'own figures', value: median(3, () => ownFigures(table.records)) },
  ];
}

function bySimple(vectors) {
  const [x, y] = [vectors.map((vector) => vector.x), vectors.map((vector) => vector.y)];
  const lengths = vectors.map((vector) => Math.hypot(vector.x, vector.y));
  const across = simple.sampleCovariance(x, y);
  return [simple.mean(x), simple.mean(y), simple.sampleVariance(x), across, simple.sampleVariance(y), simple.mean(lengths), simple.median(lengths)];
}

function byMath(vectors) {
  const [x, y] = [vectors.map((vector) => vector.x), vectors.map((vector) => vector.y)];
  const lengths = vectors.map((vector) => Math.hypot(vector.x, vector.y));
  const [mx, my] = [math.mean(x), math.mean(y)];
  const across = math.dot(math.subtract(x, mx), math.subtract(y, my)) / (vectors.length - 1);
  return [mx, my, math.variance(x), across, math.variance(y), math.mean(lengths), math.median(lengths)];
}

/** Ways that disagree are not worth timing. */
function check({ centroid, covariance, meanMagnitude, medianMagnitude }, ...others) {
  const ours = [centroid.x, centroid.y, covariance[0][0], covariance[0][1], covariance[1][1], meanMagnitude, medianMagnitude];
  for (const theirs of others) {
    if (!ours.every((value, index) => Math.abs(value - theirs[index]) < 1e-9)) throw new Error(`The figures disagree: ${ours} and ${theirs}.`);
  }
}

function median(runs, task) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    task();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)];
}
