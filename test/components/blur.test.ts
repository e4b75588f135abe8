import { expect } from '@open-wc/testing';
import { blurPicture } from '../../components/internal/blur/blur-client.js';
import { SIGHT_LIMITS, blur, type Picture } from '../../core/sight.js';
import { RefusedValue } from '../../core/check.js';
import { apart, closeFrames, countWorkers, framed, look, noise, pause, watch, type Watched } from './blur-support.js';

const workers = countWorkers(window as unknown as { Worker: typeof Worker });
const open: Watched[] = [];

function watched(picture: Picture): Watched {
  const made = watch(blurPicture, picture);
  open.push(made);
  return made;
}

afterEach(() => {
  for (const { client } of open.splice(0)) client.dispose();
  closeFrames();
});

describe('a picture that is kept blurred in a worker', () => {
  it('is to the byte what the core makes of it', async () => {
    for (const shot of [noise(120, 77), noise(64, 64, { grey: true })]) {
      const { client, next } = watched(shot);
      for (const options of [look(20), look(140, { model: 'wave', pupilMm: 2 }), look(65, { frame: 'dial' })]) {
        client.show(options);
        expect(apart(await next(), shot, options)).to.equal(0);
      }
    }
    expect(workers.made.length).to.equal(1);
  });

  it('goes there in pieces when it is large', async () => {
    const shot = noise(1100, 700, { grey: true });
    const { client, next } = watched(shot);
    client.show(look(20));
    expect(apart(await next(), shot, look(20))).to.equal(0);
  });

  it('stays the caller’s, and so do the options', async () => {
    const shot = noise(50, 50);
    const options = look(20);
    const { client, axes, next } = watched(shot);
    client.show(options);
    options.refraction.axis = 90;
    expect(apart(await next(), shot, look(20))).to.equal(0);
    expect(axes).to.deep.equal([20]);
    expect(shot.data.length).to.equal(10_000);
  });

  it('is the listener’s until the next has come, and for good when it was the last', async () => {
    const shot = noise(70, 50);
    const { client, pictures, next } = watched(shot);
    for (const axis of [20, 30, 40]) {
      client.show(look(axis));
      await next();
    }
    client.dispose();
    await pause(30);
    expect(pictures.map(({ data }) => data.length)).to.deep.equal([0, 0, shot.data.length]);
    expect(apart(pictures[2]!, shot, look(40))).to.equal(0);
  });

  it('may be sent on by its listener', async () => {
    const shot = noise(70, 50);
    const { client, next } = watched(shot);
    for (const axis of [20, 30, 40]) {
      client.show(look(axis));
      const came = (await next()) as Picture;
      expect(apart(came, shot, look(axis))).to.equal(0);
      structuredClone(came, { transfer: [came.data.buffer] });
    }
  });

  it('shares the worker with others, each of whom gets its own', async () => {
    const shots = [noise(90, 90), noise(91, 80), noise(70, 92)];
    const all = shots.map(watched);
    for (const [i, { client }] of all.entries()) client.show(look(10 + i));
    const came = await Promise.all(all.map(({ next }) => next()));
    expect(came.map((picture, i) => apart(picture, shots[i]!, look(10 + i)))).to.deep.equal([0, 0, 0]);
    expect(workers.made.length - workers.ended).to.equal(1);
  });
});

describe('the newest request', () => {
  it('wins: of many at once the last is shown, and at most one before it', async () => {
    const shot = noise(200, 200);
    const { client, axes, pictures, next } = watched(shot);
    for (let axis = 1; axis <= 60; axis += 1) client.show(look(axis));
    while (axes.at(-1) !== 60) await next();
    expect(axes.length).to.be.at.most(2);
    expect(apart(pictures.at(-1)!, shot, look(60))).to.equal(0);
    await pause(100);
    expect(axes.at(-1)).to.equal(60);
  });

  it('does not keep pictures from coming while options go on changing', async () => {
    const { client, axes, next } = watched(noise(512, 512));
    const last = await change(client, 1500);
    const during = axes.length;
    while (axes.at(-1) !== last) await next();
    expect(during).to.be.at.least(8);
    expect(axes.every((axis, i) => i === 0 || axis > axes[i - 1]!)).to.equal(true);
  });

  it('nor when each picture takes long', async () => {
    const { client, axes } = watched(noise(512, 512));
    await change(client, 3000, { model: 'wave', pupilMm: 6 });
    expect(axes.length).to.be.at.least(2);
  });

  it('ends a slow model at once when it asks for a quick one', async () => {
    const shot = noise(1000, 1000, { grey: true });
    const { client, axes, next } = watched(shot);
    client.show(look(20));
    await next();
    client.show(look(30, { model: 'wave', pupilMm: 8 }));
    await pause(60);
    client.show(look(40));
    await next();
    expect(axes).to.deep.equal([20, 40]);
  });

  async function change(client: Watched['client'], ms: number, more = {}): Promise<number> {
    const begun = performance.now();
    let axis = 0;
    for (; performance.now() < begun + ms; await pause(8)) client.show(look((axis += 0.25), more));
    return axis;
  }
});

describe('after dispose', () => {
  it('nobody is called, whatever is on its way', async () => {
    const gone = watched(noise(512, 512));
    gone.client.show(look(20));
    await gone.next();
    gone.client.show(look(30));
    await pause(5);
    gone.client.show(look(40, { pupilMm: 12 }));
    const before = [...gone.axes];
    gone.client.dispose();
    gone.client.show(look(50));
    gone.client.dispose();
    const other = watched(noise(100, 100));
    other.client.show(look(20));
    await other.next();
    await pause(200);
    expect([gone.axes, gone.problems]).to.deep.equal([before, []]);
  });

  it('nor when it is called by the listener itself', async () => {
    let calls = 0;
    const client = blurPicture(noise(60, 60), {
      picture: () => {
        calls += 1;
        client.show(look(50));
        client.dispose();
      },
      problem: () => (calls += 100),
    });
    client.show(look(20));
    client.show(look(21));
    while (calls === 0) await pause(10);
    await pause(150);
    expect(calls).to.equal(1);
  });

  it('the worker ends when nobody is left, and not while one comes back at once', async () => {
    const frame = await framed();
    const count = countWorkers(frame);
    const first = watch(frame.blurPicture, noise(40, 40));
    first.client.show(look(20));
    await first.next();
    first.client.dispose();
    const second = watch(frame.blurPicture, noise(40, 40));
    second.client.show(look(20));
    await second.next();
    await pause(1300);
    expect([count.made.length, count.ended]).to.deep.equal([1, 0]);
    second.client.dispose();
    await pause(1300);
    expect([count.made.length, count.ended]).to.deep.equal([1, 1]);
    const third = watch(frame.blurPicture, noise(40, 40));
    third.client.show(look(20));
    expect(apart(await third.next(), noise(40, 40), look(20))).to.equal(0);
    expect(count.made.length).to.equal(2);
  });
});

describe('what is refused', () => {
  it('is named as the core names it, and later options work', async () => {
    const shot = noise(60, 60);
    const { client, next } = watched(shot);
    for (const options of [look(20, { pupilMm: 12 }), look(20, { model: 'magic' as 'wave' }), look(NaN), look(20, { degreesPerPixel: 0.0001 })]) {
      client.show(options);
      const error = await next();
      expect(error instanceof RefusedValue && error instanceof RangeError).to.equal(true);
      const own = refusal(() => blur(shot, options));
      expect([(error as Error).message, { ...error }]).to.deep.equal([own.message, { ...own }]);
      client.show(look(30));
      expect(apart(await next(), shot, look(30))).to.equal(0);
    }
    expect(refusal(() => blur(shot, look(20, { pupilMm: 12 }))).message).to.contain('pupil: 12');
  });

  it('is no concern when newer options have come meanwhile', async () => {
    const { client, axes, problems, next } = watched(noise(60, 60));
    client.show(look(20));
    await next();
    client.show(look(20, { pupilMm: 12 }));
    // The answer is there before the page can take it.
    for (const begun = performance.now(); performance.now() < begun + 80; );
    client.show(look(30));
    await next();
    await pause(50);
    expect(axes).to.deep.equal([20, 30]);
    expect(problems).to.deep.equal([]);
  });

  const { max } = SIGHT_LIMITS.side;
  const faulty: Record<string, Picture> = {
    'too wide': noise(max + 1, 2),
    'too large': { data: new Uint8ClampedArray(4 * (max + 1) ** 2), width: max + 1, height: max + 1 },
    'shorter than it says': { ...noise(20, 20), height: 21 },
    'of another kind': { data: [1, 2, 3, 255] as unknown as Uint8ClampedArray, width: 1, height: 1 },
    'empty': { data: new Uint8ClampedArray(0), width: 0, height: 0 },
    'none': null as unknown as Picture,
  };
  for (const [what, picture] of Object.entries(faulty)) {
    it(`may be the picture: ${what}`, async () => {
      const { client, problems, next } = watched(picture);
      client.show(look(20));
      const error = (await next()) as Error;
      expect(error.message).to.equal(refusal(() => blur(picture, look(20))).message);
      client.show(look(30));
      expect(((await next()) as Error).message).to.equal(error.message);
      await pause(30);
      expect(problems.length).to.equal(2);
    });
  }

  function refusal(ask: () => unknown): Error {
    try {
      ask();
    } catch (error) {
      return error as Error;
    }
    return new Error('not refused');
  }
});
