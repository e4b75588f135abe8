/**
 * Runs the tests of the core for Stryker. Each test file is made one script with all that it imports, so that a mutant
 * costs the evaluation of a few scripts and not the start of a test runner for each. Of a file whose tests meet the mutant
 * while they run, only these tests are run; all of them where its mere loading meets it. The first failure ends a run.
 */
import { PluginKind, commonTokens, declareClassPlugin } from '@stryker-mutator/api/plugin';
import { DryRunStatus, TestStatus, determineHitLimitReached, toMutantRunResult } from '@stryker-mutator/api/test-runner';
import { readFileSync, writeFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { bundled } from './bundle.mjs';
import { collected } from './vitest.mjs';

/** What Stryker's switches in the code look at. */
const switches = (globalThis.__stryker__ ??= {});

/** Processor time of each test in the first run, for the runners that work side by side. */
const TIMES = 'test/mutation/times.json';

/**
 * Longest test in ms that is run for each mutant that it meets, and how much of them all together; the quick ones are asked
 * first. Of test files on the subject of the mutated file longer ones are, and as many as there are.
 */
const QUICK = 50;
const TOGETHER = 1500;
const QUICK_IN_OWN = 400;

class BundledTests {
  static inject = [commonTokens.options];

  constructor({ mutationTests }) {
    this.wanted = mutationTests;
    this.told = new Map();
  }

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.files = await bundled(resolve('test/core'), this.wanted);
  }

  async dryRun() {
    const tests = [];
    delete switches.activeMutant;
    delete switches.mutantCoverage;
    for (const [file, script] of this.files) {
      switches.currentTestId = file;
      let list = [];
      tests.push(await result(file, async () => {
        const read = await collected(script);
        list = read.list;
        await read.before();
      }));
      for (const [index, { name, run }] of list.entries()) {
        switches.currentTestId = `${file}#${index}`;
        tests.push(await result(switches.currentTestId, run, name));
      }
    }
    delete switches.currentTestId;
    writeFileSync(TIMES, JSON.stringify(Object.fromEntries(tests.map(({ id, timeSpentMs }) => [id, timeSpentMs]))));
    return { status: DryRunStatus.Complete, tests, mutantCoverage: switches.mutantCoverage ?? { static: {}, perTest: {} } };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, sandboxFileName }) {
    Object.assign(switches, { activeMutant: activeMutant.id, hitCount: hitLimit === undefined ? undefined : 0, hitLimit });
    const tests = [];
    this.times ??= JSON.parse(readFileSync(TIMES, 'utf8'));
    for (const { file, quick } of this.order(testFilter, basename(sandboxFileName, '.ts'))) {
      if (await this.firstFailure(file, quick, tests)) {
        this.told.set(file, (this.told.get(file) ?? 0) + 1);
        break;
      }
    }
    const reached = determineHitLimitReached(switches.hitCount, hitLimit);
    delete switches.activeMutant;
    return toMutantRunResult(reached ?? { status: DryRunStatus.Complete, tests });
  }

  /** Test files with what is to be run of each, by number: those on the subject of the mutated file, then those that have told most mutants for their time. */
  order(filter, mutated) {
    const chosen = new Map();
    for (const id of filter ?? Object.keys(this.times)) {
      const [file, index] = id.split('#');
      if (!chosen.has(file)) chosen.set(file, new Set());
      for (const number of index === undefined ? this.numbers(file) : [Number(index)]) chosen.get(file).add(number);
    }
    const all = [...chosen].flatMap(([file, numbers]) => {
      const own = subject(file).startsWith(subject(mutated)) || subject(mutated).startsWith(subject(file));
      const limit = own ? QUICK_IN_OWN : QUICK;
      const quick = [...numbers].filter((number) => this.times[`${file}#${number}`] <= limit).sort((a, b) => a - b);
      const time = quick.reduce((sum, number) => sum + this.times[`${file}#${number}`], this.times[file]);
      return this.times[file] > (own ? 2 * limit : limit) ? [] : [{ file, quick, own, time, named: file === `${mutated}.test.ts`, worth: (1 + (this.told.get(file) ?? 0)) / (2 + time) }];
    }).sort((a, b) => Number(b.named) - Number(a.named) || Number(b.own) - Number(a.own) || b.worth - a.worth);
    let spent = 0;
    return all.filter(({ own, time }) => own || (spent += time) <= TOGETHER);
  }

  numbers(file) {
    return Object.keys(this.times).filter((id) => id.startsWith(`${file}#`)).map((id) => Number(id.split('#')[1]));
  }

  async firstFailure(file, numbers, tests) {
    let list = [];
    const failed = async (id, run, name) => {
      tests.push(await result(id, run, name));
      return tests.at(-1).status === TestStatus.Failed;
    };
    const load = async () => {
      const read = await collected(this.files.get(file));
      list = read.list;
      await read.before();
    };
    if (await failed(file, load)) return true;
    for (const number of numbers) {
      const { name, run } = list[number] ?? { name: 'is gone', run: () => { throw new Error('The test is gone.'); } };
      if (await failed(`${file}#${number}`, run, name)) return true;
    }
    return false;
  }
}

/** What a file is about: the first word of its name. */
const subject = (file) => file.split(/[-.]/)[0];

async function result(id, run, name = 'loads') {
  const begun = process.cpuUsage();
  let failure;
  try {
    await run();
  } catch (error) {
    failure = String(error?.message ?? error) || 'failed';
  }
  const { user, system } = process.cpuUsage(begun);
  const timeSpentMs = (user + system) / 1000;
  const [file] = id.split('#');
  const known = { id, name: `${file} ${name}`, fileName: resolve('test/core', file), timeSpentMs };
  return failure === undefined ? { ...known, status: TestStatus.Success } : { ...known, status: TestStatus.Failed, failureMessage: failure };
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'bundled', BundledTests)];
