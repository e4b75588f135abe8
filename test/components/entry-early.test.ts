/** A form that is used before what reads it has been loaded. Alone in its file: in every other one it has been. */
import { expect } from '@open-wc/testing';
import '../../components/case/define.js';
import '../../components/entry/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigEntry } from '../../components/entry/entry.js';
import { drawn, listen } from './support.js';

describe('astig-entry: before its hands are there', () => {
  it('shows the whole form, loses nothing that is done, and lets no native event out', async () => {
    const eye = document.createElement('astig-case') as AstigCase;
    const entry = document.createElement('astig-entry') as AstigEntry;
    eye.steepK = 45;
    eye.append(entry);
    document.body.append(eye);
    const log = listen(eye);
    const native: string[] = [];
    for (const type of ['input', 'change']) eye.addEventListener(type, () => native.push(type));
    while (!entry.shadowRoot?.querySelector('input')) await new Promise((resolve) => queueMicrotask(() => resolve(null)));

    const root = entry.shadowRoot!;
    expect((root.getElementById('steepK') as HTMLInputElement).value).to.equal('45.00');
    const send = (input: HTMLInputElement, type: string): boolean => input.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
    const age = root.getElementById('age') as HTMLInputElement;
    age.value = '71';
    send(age, 'input');
    const entered = root.querySelectorAll<HTMLInputElement>('[name=incision]')[1]!;
    send(age, 'change');
    entered.checked = true;
    send(entered, 'change');
    // To be drawn again must not take the text away.
    entry.requestUpdate();
    expect([eye.plan.age, log.inputs.length], 'the hands are there already').to.deep.equal([null, 0]);

    await drawn(eye, entry);
    expect([eye.plan.age, age.value, eye.plan.incisionSite]).to.deep.equal([71, '71', 180]);
    expect([log.inputs.length, log.changes.length, native.length]).to.deep.equal([2, 2, 0]);
    eye.undo();
    expect([eye.plan.age, eye.plan.incisionSite]).to.deep.equal([71, null]);
    eye.remove();
  });

  it('a case that nobody can change has nothing to take back, and says so by doing nothing', () => {
    const eye = document.createElement('astig-case') as AstigCase;
    document.body.append(eye);
    eye.steepK = 45;
    eye.undo();
    eye.redo();
    expect([eye.plan.steepK, eye.model.moves]).to.deep.equal([45, null]);
    eye.remove();
  });
});
