import { expect } from '@open-wc/testing';
import { apart, closeFrames, countWorkers, framed, idleWorker, look, noise, pause, watch, type Frame } from './blur-support.js';

/** The policy of a careful host. */
const STRICT = `default-src 'none'; script-src 'self'; style-src 'self'; worker-src 'self'`;
const TYPED = `${STRICT}; require-trusted-types-for 'script'`;

afterEach(closeFrames);

/** Shows a picture, and then another, in a page of its own. */
async function seen(frame: Frame): Promise<number[]> {
  const shot = noise(130, 90);
  const { client, next } = watch(frame.blurPicture, shot);
  client.show(look(20));
  const first = apart(await next(), shot, look(20));
  client.show(look(70));
  const second = apart(await next(), shot, look(70));
  client.dispose();
  return [first, second];
}

describe('where no worker may be, a picture is kept blurred in the page: to the byte the same', () => {
  const cases: Record<string, (frame: Frame) => void> = {
    'there are none': (frame) => void delete (frame as Partial<Frame>).Worker,
    'it is refused at once, as across origins': (frame) => (frame.Worker = idleWorker(() => {
      throw new DOMException('refused', 'SecurityError');
    })),
    'its script is blocked or missing': (frame) => (frame.Worker = idleWorker((worker) => setTimeout(() => worker.onerror?.(new Event('error', { cancelable: true })), 30))),
    'it never says that it has started': (frame) => (frame.Worker = idleWorker(() => undefined)),
  };
  for (const [what, prepare] of Object.entries(cases)) {
    it(what, async () => {
      const frame = await framed({ prepare });
      expect(await seen(frame)).to.deep.equal([0, 0]);
      expect(frame.said).to.deep.equal([]);
    });
  }

  it('it fails in the middle: the newest request of each is served', async () => {
    const frame = await framed();
    const count = countWorkers(frame);
    const [one, two] = [noise(512, 512), noise(80, 80)];
    const first = watch(frame.blurPicture, one);
    const second = watch(frame.blurPicture, two);
    first.client.show(look(20));
    await first.next();
    first.client.show(look(30));
    first.client.show(look(40));
    second.client.show(look(50));
    count.made[0]!.dispatchEvent(new Event('error', { cancelable: true }));
    expect(apart(await first.next(), one, look(40))).to.equal(0);
    expect(apart(await second.next(), two, look(50))).to.equal(0);
    await pause(50);
    expect([first.axes, second.axes]).to.deep.equal([[20, 40], [50]]);
    expect([count.made.length, count.ended]).to.deep.equal([1, 1]);
    expect(frame.said).to.deep.equal([]);
  });

  it('refusals and dispose work there too, and the newest wins', async () => {
    const frame = await framed({ prepare: cases['there are none'] });
    const shot = noise(200, 200);
    const { client, axes, problems, next } = watch(frame.blurPicture, shot);
    client.show(look(20, { pupilMm: 12 }));
    expect(((await next()) as Error).message).to.contain('pupil: 12');
    for (let axis = 1; axis < 60; axis += 1) client.show(look(axis));
    const options = look(60);
    client.show(options);
    options.refraction.axis = 10;
    expect(apart(await next(), shot, look(60))).to.equal(0);
    client.show(look(70));
    await pause(10);
    client.show(look(80));
    client.dispose();
    await pause(200);
    expect(axes.filter((axis) => axis !== 70)).to.deep.equal([60]);
    expect(problems.length).to.equal(1);
  });

  it('the page goes on living: other tasks run while a picture is made', async () => {
    const frame = await framed({ prepare: cases['there are none'] });
    const { client, next } = watch(frame.blurPicture, noise(512, 512));
    client.show(look(20));
    await next();
    let turns = 0;
    const channel = new MessageChannel();
    channel.port1.onmessage = () => channel.port2.postMessage((turns += 1));
    channel.port2.postMessage(0);
    client.show(look(30, { model: 'wave' }));
    await next();
    channel.port1.close();
    expect(turns).to.be.at.least(10);
  });
});

describe('a strict page', () => {
  for (const [what, policy] of Object.entries({
    'with scripts, styles and workers of its own alone': STRICT,
    'with Trusted Types': TYPED,
    'with Trusted Types by name': `${TYPED}; trusted-types lit-html astigmatism-elements`,
  })) {
    it(`${what} has its worker and no offence`, async () => {
      const frame = await framed({ policy, prepare: (page) => void Object.assign(page, { count: countWorkers(page) }) });
      expect(await seen(frame)).to.deep.equal([0, 0]);
      const { made, ended } = (frame as unknown as { count: ReturnType<typeof countWorkers> }).count;
      expect([made.length, ended]).to.deep.equal([1, 0]);
      expect([frame.violations, frame.said]).to.deep.equal([[], []]);
    });
  }

  for (const [what, policy] of Object.entries({
    'that names other Trusted Types': `${TYPED}; trusted-types lit-html`,
    'that allows no workers': `${STRICT.replace("worker-src 'self'", "worker-src 'none'")}`,
  })) {
    it(`${what} is offended once, and is served without`, async () => {
      const frame = await framed({ policy });
      expect(await seen(frame)).to.deep.equal([0, 0]);
      expect(await seen(frame)).to.deep.equal([0, 0]);
      expect(frame.violations.length).to.equal(1);
      expect(frame.said).to.deep.equal([]);
    });
  }
});
