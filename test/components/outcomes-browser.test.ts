/** What the core takes from libraries that no browser loads as they are has to run in one all the same. */
import { expect } from '@open-wc/testing';
import { principalPowers } from '../../core/eye.js';
import { readTable } from '../../core/outcomes.js';

/** Invented: two eyes, of which the second has a meridian that no dial has. */
const TABLE = `eye;astigmatism before;steep meridian before;astigmatism after;steep meridian after
right;1,50;95;0,75;100
left;1,25;200;0,50;80
`;

describe('core in a browser', () => {
  it('reads a table', () => {
    const { records, refused } = readTable(TABLE);
    expect([records.length, refused.length]).to.deep.equal([1, 1]);
  });

  it('takes powers of an astigmatic surface apart', () => {
    const { flat, steep, steepMeridian } = principalPowers([[43, 0], [0, 44]]);
    expect([flat, steep, steepMeridian]).to.deep.equal([43, 44, 90]);
  });
});
