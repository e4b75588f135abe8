/** The same transform by others that a developer might take; what is not installed is named, and not timed. */
import { spawnSync } from 'node:child_process';

const RUNS = { 'ndarray-fft': 7, mathjs: 3 };

/** For each: how long it takes, ms (median), and the real part it found at a frequency; or why it was not asked. */
export async function others(plane, side) {
  return Promise.all([byPackage('ndarray-fft', () => byNdarray(plane, side)), byPackage('mathjs', () => byMathjs(plane, side)), byScipy(plane, side)]);
}

async function byPackage(name, open) {
  try {
    return { name, ...(await open()) };
  } catch (error) {
    if (error.code !== 'ERR_MODULE_NOT_FOUND') throw error;
    return { name, missing: 'not installed' };
  }
}

async function byNdarray(plane, side) {
  const { default: ndarray } = await import('ndarray');
  const { default: transform } = await import('ndarray-fft');
  const re = ndarray(new Float64Array(side * side), [side, side]);
  const im = ndarray(new Float64Array(side * side), [side, side]);
  const once = () => {
    re.data.set(plane);
    im.data.fill(0);
    transform(1, re, im);
  };
  return { time: () => median(RUNS['ndarray-fft'], once), check: (x, y) => re.get(y, x) };
}

async function byMathjs(plane, side) {
  const { fft } = await import('mathjs');
  const rows = Array.from({ length: side }, (_, y) => [...plane.subarray(y * side, (y + 1) * side)]);
  let found;
  return { time: () => median(RUNS.mathjs, () => (found = fft(rows))), check: (x, y) => found[y][x].re };
}

/** In its own process and its own clock, so that neither Python's start nor the pipe counts. */
function byScipy(plane, side) {
  const script = `
import sys, time, json
import numpy
from scipy import fft
plane = numpy.frombuffer(sys.stdin.buffer.read()).reshape(${side}, ${side})
times = []
for run in range(9):
    start = time.perf_counter()
    found = fft.rfft2(plane)
    times.append(1000 * (time.perf_counter() - start))
print(json.dumps({'time': sorted(times)[4], 'at': found[411, 37].real}))`;
  const { status, stdout } = spawnSync('python3', ['-c', script], { input: Buffer.from(plane.buffer), encoding: 'utf8' });
  if (status !== 0) return { name: 'scipy', missing: 'not installed' };
  const { time, at } = JSON.parse(stdout);
  return { name: 'scipy (compiled code)', time: () => time, check: () => at };
}

function median(runs, task) {
  const times = Array.from({ length: runs + 1 }, () => {
    const start = performance.now();
    task();
    return performance.now() - start;
  }).slice(1);
  return times.sort((a, b) => a - b)[runs >> 1];
}
