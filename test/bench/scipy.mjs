/** The transform by scipy, where it is installed. */
import { spawnSync } from 'node:child_process';
import { planeOf } from './transforms.mjs';

/**
 * How long it takes, ms (median), and the real part it finds at a frequency; or why it was not asked. In its own process
 * and by its own clock, so that neither Python's start nor the pipe counts.
 */
export function byScipy(side, [x, y]) {
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
print(json.dumps({'time': sorted(times)[4], 'real': found[${y}, ${x}].real}))`;
  const { status, stdout } = spawnSync('python3', ['-c', script], { input: Buffer.from(planeOf(side).buffer), encoding: 'utf8' });
  return status === 0 ? JSON.parse(stdout) : { missing: 'not installed' };
}
