import { expect } from '@open-wc/testing';
import { exportTable, readTable } from '../../core/outcomes.js';
import { INVENTED_SLIPS, inventedResults } from '../../stories/results.js';
import { click, opened, settled, text } from './outcomes-support.js';
import { until } from './support.js';

const fileOf = (content: string): File => new File([content], 'own.csv', { type: 'text/csv' });

/** Presses the button and takes the file that the page would save. */
async function saved(root: ShadowRoot): Promise<{ name: string; content: string }> {
  const old = URL.createObjectURL;
  const files: Blob[] = [];
  let name = '';
  const onClick = (event: Event): void => {
    if (!(event.target instanceof HTMLAnchorElement)) return;
    event.preventDefault();
    name = event.target.download;
  };
  const press = HTMLAnchorElement.prototype.click;
  HTMLAnchorElement.prototype.click = function () {
    this.addEventListener('click', onClick);
    press.call(this);
  };
  URL.createObjectURL = (file: Blob) => {
    files.push(file);
    return old.call(URL, file);
  };
  try {
    click(root, '.export');
    await until(() => name !== '', 'a file');
    return { name, content: new TextDecoder('utf-8', { ignoreBOM: true }).decode(await files[0]!.arrayBuffer()) };
  } finally {
    URL.createObjectURL = old;
    HTMLAnchorElement.prototype.click = press;
  }
}

describe('own results in and out', () => {
  it('takes a file that is dropped', async () => {
    const { view, root } = await opened(null);
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(fileOf(inventedResults(25)));
    const zone = root.querySelector('.drop')!;
    const over = new DragEvent('dragover', { dataTransfer, bubbles: true, cancelable: true });
    zone.dispatchEvent(over);
    expect(over.defaultPrevented).to.equal(true);
    const drop = new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true });
    zone.dispatchEvent(drop);
    expect(drop.defaultPrevented).to.equal(true);
    await until(() => text(root, '[role=status]') !== '', 'a report');
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 25 of 25.');
    await settled(view);
    expect(root.querySelectorAll('.drop.over').length).to.equal(0);
  });

  it('takes text that is dropped', async () => {
    const { root } = await opened(null);
    const dataTransfer = new DataTransfer();
    dataTransfer.setData('text/plain', inventedResults(21));
    root.querySelector('.drop')!.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    await until(() => text(root, '[role=status]') !== '', 'a report');
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 21 of 21.');
  });

  it('takes a file that is chosen, and the same one again', async () => {
    const { root } = await opened(null);
    const input = root.querySelector<HTMLInputElement>('input[type=file]')!;
    for (const eyes of [22, 23]) {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(fileOf(inventedResults(eyes)));
      input.files = dataTransfer.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
      await until(() => text(root, '[role=status]') === `Eyes counted: ${eyes} of ${eyes}.`, 'a report');
      expect(input.value).to.equal('');
    }
  });

  it('takes what is pasted, and nothing from nothing', async () => {
    const { view, root } = await opened(null);
    root.querySelector('details')!.open = true;
    click(root, 'details button');
    await settled(view);
    expect(text(root, '[role=status]')).to.equal('');
    const area = root.querySelector('textarea')!;
    area.focus();
    document.execCommand('insertText', false, inventedResults(24));
    click(root, 'details button');
    await until(() => text(root, '[role=status]') !== '', 'a report');
    expect(text(root, '[role=status]')).to.equal('Eyes counted: 24 of 24.');
  });

  it('saves the table so that it is read again as the same', async () => {
    const data = `${inventedResults(30)}\n${INVENTED_SLIPS}`;
    const { root } = await opened(data);
    const { name, content } = await saved(root);
    expect(name).to.equal('outcomes.csv');
    const table = readTable(data);
    expect(content).to.equal(exportTable(table));
    const again = readTable(content);
    expect(again.problems).to.deep.equal([]);
    expect(again.records).to.deep.equal(table.records);
    expect(again.refused.length).to.equal(4);
    expect(text(root, '.saved')).to.contain('every column of yours');
  });

  it('saves no column with names, and says so', async () => {
    const named = inventedResults(25).split('\n').map((row, index) => `${index ? `Rowan ${index}` : 'Name'};${row}`);
    const { root } = await opened([...named, 'Rowan 26;x'].join('\n'));
    expect(text(root, '.saved')).to.equal('Columns that were not read are left out of the saved table: “Name”.');
    const { content } = await saved(root);
    expect(content).not.to.contain('Rowan');
    expect(content).not.to.contain('Name');
    expect(root.textContent).not.to.contain('Rowan');
    expect(readTable(content).records.length).to.equal(25);
  });
});
