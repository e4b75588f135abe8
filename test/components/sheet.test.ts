import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigSheet } from '../../components/sheet/sheet.js';
import { apart, drawn, drawnAt, listen } from './support.js';
import { FULL, LANGUAGES, rowsOf, sheetOf, textOf } from './sheet-support.js';

const VIEWS = ['facing', 'above', 'temporal'] as const;
const EYES = ['right', 'left'] as const;

/** Where a direction of the dial points on the screen, by where a surgeon sits: not by the formula of the element. */
const SCREEN = {
  facing: { right: 0, left: 0 },
  above: { right: 180, left: 180 },
  // At the temporal side that side is nearest, at the bottom (270): 180° of a right eye, 0° of a left one.
  temporal: { right: 90, left: -90 },
} as const;

/** Where the box of a part lies from the middle of the dial. */
function away(sheet: Element, part: string): { x: number; y: number } {
  const box = sheet.shadowRoot!.querySelector(`[part~="${part}"]`)!.getBoundingClientRect();
  const dial = sheet.shadowRoot!.querySelector('[part~="limbus"]')!.getBoundingClientRect();
  return { x: box.x + box.width / 2 - dial.x - dial.width / 2, y: box.y + box.height / 2 - dial.y - dial.height / 2 };
}

const directionOf = ({ x, y }: { x: number; y: number }): number => (Math.atan2(-y, x) * 180) / Math.PI;

describe('astig-sheet', () => {
  it('tells each cut in degrees, clock hours and millimetres', async () => {
    const { sheet } = await sheetOf({ ...FULL, eye: 'right', incisionSite: 180, incisionWidth: 2.4, arcSite: 40, arcLength: 60, arcZone: 11, lensMeridian: 94 });
    // 60° on 11 mm: π·11/6 = 5.76 mm, and 5.5 mm straight. 40° on a limbus of 11.7 mm: 4.08 mm. 2.4 mm: 2·asin(2.4/11.7) = 23.7°.
    expect(rowsOf(sheet)).to.deep.equal([
      ['1 Incision', '180°', '9 o\'clock', '168° – 192°', '2.4 mm', '2.4 mm', 'on the mark at 180°'],
      ['2 Arc', '40°', '1:40 o\'clock', '10° – 70°', '5.8 mm', '5.5 mm', '4.1 mm from 0° towards 90°'],
      ['3 Second arc', '220°', '7:40 o\'clock', '190° – 250°', '5.8 mm', '5.5 mm', '4.1 mm from 180° towards 270°'],
      ['4 Toric lens, 1.50 D', '94°', '11:52 o\'clock', '–', '–', '–', '0.4 mm from 90° towards 180°'],
    ]);
  });

  it('tells depth, thickness and share, and leaves lines for what nobody has measured', async () => {
    const whole = await sheetOf({ arcDepth: 510, localThickness: 600 });
    expect(whole.text('depth')).to.match(/^Depth of the arcs, by blade *Depth set *510 µm *Thickness measured at the arc *600 µm *Depth as a share of it *85 %$/);
    const none = await sheetOf({ arcDepth: null, localThickness: null, arcMethod: 'laser' });
    expect(none.text('depth')).to.match(/by laser.*What is empty is not in the plan\. Measure at the site/);
    expect(none.sheet.shadowRoot!.querySelectorAll('[part~="depth"] [part~="blank"]')).to.have.length(3);
    // One measured thickness is that of one arc.
    const pair = await sheetOf({ arcCount: 2, arcDepth: 510, localThickness: 600 });
    expect(pair.sheet.shadowRoot!.querySelectorAll('[part~="depth"] [part~="blank"]')).to.have.length(1);
    expect(pair.text('depth')).to.contain('Thickness measured at the second arc');
  });

  it('has no depth, no lens to check and no arc where none is planned', async () => {
    const { sheet, text } = await sheetOf({ arcCount: 0, arcSite: null });
    expect(text('depth')).to.equal('');
    expect(text('checks')).not.to.contain('Lens');
    expect(rowsOf(sheet).map(([what]) => what)).to.deep.equal(['1 Incision']);
    expect(sheet.shadowRoot!.querySelectorAll('[part~="arc"]')).to.have.length(0);
  });

  it('prints the grave cautions and what to think about, and always who decides', async () => {
    const { sheet, text } = await sheetOf(FULL);
    const ids = [...sheet.shadowRoot!.querySelectorAll('[part~="caution"]')].map((item) => item.getAttribute('data-id'));
    expect(ids).to.include.members(['irregular-cornea', 'risk-collagen', 'risk-dry-eye', 'risk-radial-cuts', 'risk-ectasia', 'arc-too-long', 'arc-too-deep', 'beyond-arcs']);
    expect(text()).to.contain('Stop: 640 µm is 94 % of the local thickness (680 µm)');
    expect(text('estimate')).to.match(/local rules and licensed judgement decide/);
    expect((await sheetOf()).text('estimate')).to.match(/local rules and licensed judgement decide/);
  });

  it('has room to tick patient, side and plan, and to sign; a box is nothing that a screen would keep', async () => {
    const { sheet, text } = await sheetOf(FULL);
    expect(text('checks')).to.match(/Patient.*Side: left eye.*Lens.*Plan read aloud.*Marked by.*Surgeon.*Date/);
    expect(sheet.shadowRoot!.querySelectorAll('.box')).to.have.length(4);
    expect(sheet.shadowRoot!.querySelectorAll('input')).to.have.length(0);
  });

  it('identifies nobody unless the page says who it is', async () => {
    const bare = await sheetOf();
    expect(bare.sheet.shadowRoot!.querySelector('slot')!.querySelectorAll('.blank')).to.have.length(1);
    const named = await sheetOf({}, html`<astig-sheet><p slot="patient">Bed 7</p></astig-sheet>`);
    const slot = named.sheet.shadowRoot!.querySelector('slot')!;
    expect(slot.assignedElements().map(({ textContent }) => textContent)).to.deep.equal(['Bed 7']);
  });

  it('fires nothing and changes nothing', async () => {
    const { eye, sheet } = await sheetOf();
    const log = listen(document);
    sheet.viewpoint = 'above';
    sheet.markSeated = 180;
    sheet.markLying = 183;
    await drawn(sheet);
    expect([log.inputs.length, log.changes.length]).to.deep.equal([0, 0]);
    expect(eye.plan.incisionSite).to.equal(180);
  });

  it('gives its drawing away as a file', async () => {
    const { sheet } = await sheetOf(FULL);
    const file = new DOMParser().parseFromString(sheet.toSVG(), 'image/svg+xml');
    expect(file.querySelector('parsererror')).to.equal(null);
    expect([...file.querySelectorAll('text')].map(({ textContent }) => textContent)).to.include.members(['270', 'Left eye', '← nasal']);
    expect(file.querySelector('title')!.textContent).to.match(/^Left eye\. Seen facing the patient/);
    const png = await sheet.toPNG({ width: 400 });
    expect(png.type).to.equal('image/png');
    expect(png.size).to.be.above(2000);
  });
});

describe('astig-sheet from where the surgeon sits', () => {
  for (const view of VIEWS) {
    for (const eye of EYES) {
      it(`draws a ${eye} eye ${view}`, async () => {
        const plan = { eye, incisionSite: 30, arcSite: 75, arcLength: 40, arcCount: 1, lensCylinder: 1, lensMeridian: 100 };
        const { sheet, text } = await sheetOf(plan, html`<astig-sheet viewpoint=${view}></astig-sheet>`);
        const screen = SCREEN[view][eye];
        expect(apart(drawnAt(sheet, '[part~="incision"] .entry'), 30 + screen)).to.be.below(0.5);
        expect(apart(drawnAt(sheet, '[part~="arc"]'), 75 + screen)).to.be.below(0.5);
        // Nose and brow, and the words beside the dial.
        expect(apart(directionOf(away(sheet, 'nose')), (eye === 'right' ? 0 : 180) + screen)).to.be.below(2);
        expect(apart(directionOf(away(sheet, 'brow')), 90 + screen)).to.be.below(2);
        expect(text('drawing')).to.match(/nasal/).and.to.match(/temporal/);
        // Figures stay upright: nothing that holds a text is turned.
        expect(sheet.shadowRoot!.querySelectorAll('.plate [transform] text')).to.have.length(0);
        const [face] = [sheet.shadowRoot!.querySelector('.face .solid')!.getBoundingClientRect()];
        const head = sheet.shadowRoot!.querySelector('.face')!.getBoundingClientRect();
        const seen = { x: face.x + face.width / 2 - head.x - head.width / 2, y: face.y + face.height / 2 - head.y - head.height / 2 };
        // Facing a patient, the right eye is at the viewer's left and above the middle of the face.
        const facing = (Math.atan2(7, eye === 'right' ? -11 : 11) * 180) / Math.PI;
        expect(apart(directionOf(seen), facing + screen)).to.be.below(3);
      });
    }
  }

  it('is seen from the front where the page names no place that there is', async () => {
    const { sheet, text } = await sheetOf({}, html`<astig-sheet viewpoint="below"></astig-sheet>`);
    expect(text('sheet')).to.contain('Seen facing the patient: brow above.');
    expect(apart(directionOf(away(sheet, 'brow')), 90)).to.be.below(2);
  });

  it('marks where the ink goes: at 12, 3, 6 and 9 o’clock', async () => {
    const { sheet } = await sheetOf();
    const dial = sheet.shadowRoot!.querySelector('[part~="limbus"]')!.getBoundingClientRect();
    const found = [...sheet.shadowRoot!.querySelectorAll('[part~="ink-mark"]')].map((mark) => {
      const box = mark.getBoundingClientRect();
      return Math.round(directionOf({ x: box.x + box.width / 2 - dial.x - dial.width / 2, y: box.y + box.height / 2 - dial.y - dial.height / 2 }) / 90) * 90;
    });
    expect(found.map((degrees) => (degrees + 360) % 360)).to.deep.equal([0, 90, 180, 270]);
  });
});

describe('astig-sheet and the turn of the eye', () => {
  const turnedSheet = (seated: number | null, lying: number | null, plan: object = {}): ReturnType<typeof sheetOf> =>
    sheetOf(plan, html`<astig-sheet .markSeated=${seated} .markLying=${lying}></astig-sheet>`);

  for (const eye of EYES) {
    for (const [seated, lying, by] of [[180, 187, 7], [0, 355, -5], [358, 4, 6]] as const) {
      it(`shifts all of a ${eye} eye by ${by}°, in the table and in the drawing`, async () => {
        const { sheet, text } = await turnedSheet(seated, lying, { ...FULL, eye, incisionSite: 2, arcSite: 178, lensMeridian: 3 });
        const used = rowsOf(sheet).map((row) => [row[1], row[2]]);
        const site = (degrees: number): string => `${(degrees + 360) % 360}°`;
        const meridian = (degrees: number): string => `${(degrees + 180) % 180 || 180}°`;
        expect(used).to.deep.equal([['2°', site(2 + by)], ['178°', site(178 + by)], ['358°', site(358 + by)], ['3°', meridian(3 + by)]]);
        expect(apart(drawnAt(sheet, '[part~="incision"] .entry'), 2 + by)).to.be.below(0.5);
        expect(apart(drawnAt(sheet, '[part~="arc"]'), 178 + by)).to.be.below(0.5);
        expect(apart(drawnAt(sheet, '[part~="arc"]', 1), 358 + by)).to.be.below(0.5);
        expect(apart(directionOf(away(sheet, 'ink-mark')), by)).to.be.below(1);
        expect(apart(directionOf(away(sheet, 'reference-mark')), lying)).to.be.below(1);
        // On the eye nothing moves: the way from an ink mark is that of the plan.
        expect(rowsOf(sheet)[0]!.at(-1)).to.equal('0.2 mm from 0° towards 90°');
        // Counter-clockwise is outwards in a right eye and inwards in a left one.
        const outwards = by > 0 === (eye === 'right');
        expect(text('torsion')).to.contain(`${by > 0 ? '+' : '−'}${Math.abs(by)}° ${by > 0 ? 'counter-clockwise' : 'clockwise'}, ${outwards ? 'towards the temple' : 'towards the nose'}`);
        expect(text('torsion')).to.contain('Never both.');
        expect(text('torsion').includes('unusual')).to.equal(Math.abs(by) > 6);
      });
    }
  }

  it('has lines to fill in while the mark has not been read again', async () => {
    const { sheet, text } = await turnedSheet(180, null);
    expect(sheet.shadowRoot!.querySelectorAll('[part~="torsion"] [part~="blank"]')).to.have.length(2);
    expect(text('torsion')).to.match(/Reference mark, sitting.*180°.*add the turn to every planned degree/);
    expect(rowsOf(sheet)[0]![1]).to.equal('180°');
    expect(text('table')).not.to.contain('To use, lying');
  });

  it('reads attributes as the case does, and an empty one as none', async () => {
    const { sheet, text } = await sheetOf({}, html`<astig-sheet mark-seated=" 180 " mark-lying=""></astig-sheet>`);
    expect([sheet.markSeated, sheet.markLying]).to.deep.equal([180, null]);
    expect(text('void')).to.equal('');
  });

  for (const [seated, lying] of [['180', '80'], ['', '180'], ['400', ''], ['180', 'left'], ['-5', '0']]) {
    it(`must not be used with “${seated}” and “${lying}”`, async () => {
      const { sheet, text } = await sheetOf({}, html`<astig-sheet mark-seated=${seated} mark-lying=${lying}></astig-sheet>`);
      expect(text('void')).to.match(/^Do not use *The readings of the reference mark/);
      expect(sheet.shadowRoot!.querySelectorAll('[part~="drawing"], [part~="side"], table')).to.have.length(0);
    });
  }
});

describe('astig-sheet never shows a wrong eye', () => {
  const isVoid = (sheet: AstigSheet, why: RegExp): void => {
    expect(textOf(sheet, 'void')).to.match(/^Do not use/).and.to.match(why);
    expect(textOf(sheet)).not.to.match(/left eye|right eye/i);
    expect(sheet.shadowRoot!.querySelectorAll('[part~="drawing"], [part~="side"], [part~="face"], table')).to.have.length(0);
    expect(() => sheet.toSVG()).to.throw(/no drawing/);
  };

  it('without a case, and where nothing is planned', async () => {
    const alone = await fixture<AstigSheet>(html`<astig-sheet></astig-sheet>`);
    await drawn(alone);
    isVoid(alone, /no plan here/);
    const empty = await sheetOf({ incisionSite: null, arcCount: 0, arcSite: null });
    isVoid(empty.sheet, /Nothing is planned/);
  });

  it('while settings are refused, although the case still has its last good plan', async () => {
    const { eye, sheet } = await sheetOf();
    eye.setAttribute('eye', 'left');
    eye.setAttribute('steep-k', '99');
    await drawn(sheet);
    isVoid(sheet, /steepK: 99 is refused; allowed is 28 to 75 D/);
    eye.setAttribute('steep-k', '44');
    await drawn(sheet);
    expect(textOf(sheet, 'side')).to.equal('Left eye');
  });

  it('says so in every language', async () => {
    const said = new Set<string>();
    for (const lang of LANGUAGES) {
      const { sheet } = await sheetOf({ incisionSite: null, arcCount: 0, arcSite: null }, undefined, lang);
      said.add(sheet.shadowRoot!.querySelector('[part~="void"] h2')!.textContent!);
    }
    expect(said.size).to.equal(LANGUAGES.length);
  });

  it('follows its case from one eye to the other', async () => {
    const root = await fixture<HTMLElement>(html`<div>
      <astig-case id="one" eye="right" incision-site="180"></astig-case><astig-case id="two" eye="left" incision-site="0"></astig-case>
      <astig-sheet for="one"></astig-sheet>
    </div>`);
    const sheet = root.querySelector('astig-sheet')!;
    await drawn(sheet);
    expect(textOf(sheet, 'side')).to.equal('Right eye');
    sheet.for = 'two';
    await drawn(sheet);
    expect(textOf(sheet, 'side')).to.equal('Left eye');
    root.querySelector('#two')!.remove();
    await drawn(sheet);
    isVoid(sheet, /no plan here/);
  });
});

describe('astig-sheet, left or right', () => {
  for (const lang of LANGUAGES) {
    it(`in words, position and shape, in ${lang}`, async () => {
      const looks = [];
      for (const eye of EYES) {
        const { sheet, text } = await sheetOf({ eye }, undefined, lang);
        const page = sheet.shadowRoot!.querySelector('.sheet')!;
        const { borderLeftWidth, borderRightWidth, borderLeftStyle, borderRightStyle } = getComputedStyle(page);
        const title = sheet.shadowRoot!.querySelector('[part~="side"]')!;
        const box = title.getBoundingClientRect();
        const whole = page.getBoundingClientRect();
        looks.push({
          word: text('side'),
          size: Number.parseFloat(getComputedStyle(title).fontSize) / Number.parseFloat(getComputedStyle(page).fontSize),
          half: box.x + box.width / 2 < whole.x + whole.width / 2 ? 'left' : 'right',
          bar: Number.parseFloat(borderLeftWidth) > Number.parseFloat(borderRightWidth) ? `left ${borderLeftStyle}` : `right ${borderRightStyle}`,
          nose: away(sheet, 'nose').x < 0 ? 'left' : 'right',
        });
      }
      const [right, left] = looks as [(typeof looks)[number], (typeof looks)[number]];
      expect(right.word).not.to.equal(left.word);
      expect(right.size).to.be.above(2.5);
      expect([right.half, left.half]).to.deep.equal(['right', 'left']);
      expect([right.bar, left.bar]).to.deep.equal(['right solid', 'left double']);
      expect([right.nose, left.nose]).to.deep.equal(['right', 'left']);
    });
  }

  it('without any colour: every line and ground is black, white or between', async () => {
    document.documentElement.setAttribute('style', 'color-scheme: dark; background: Canvas; color: CanvasText');
    const { sheet } = await sheetOf(FULL, html`<astig-sheet mark-seated="10" mark-lying="12"></astig-sheet>`);
    const colours = new Set<string>();
    for (const element of sheet.shadowRoot!.querySelectorAll('.sheet, .sheet *')) {
      const { color, fill, stroke, backgroundColor, borderTopColor } = getComputedStyle(element);
      for (const one of [color, fill, stroke, backgroundColor, borderTopColor]) if (one !== 'none' && !one.startsWith('rgba')) colours.add(one);
    }
    document.documentElement.removeAttribute('style');
    expect([...colours].sort()).to.deep.equal(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    expect(getComputedStyle(sheet).backgroundColor).to.equal('rgb(255, 255, 255)');
  });
});

describe('astig-sheet on a page that changes', () => {
  it('is drawn anew with its case', async () => {
    const { eye, sheet } = await sheetOf();
    eye.incisionSite = 90;
    await drawn(sheet);
    expect(rowsOf(sheet)[0]![1]).to.equal('90°');
    expect(apart(drawnAt(sheet, '[part~="incision"] .entry'), 90)).to.be.below(0.5);
    const other = eye.cloneNode(false) as AstigCase;
    other.plan = { eye: 'left', incisionSite: 0 };
    eye.after(other);
    other.append(sheet);
    await drawn(sheet);
    expect(textOf(sheet, 'side')).to.equal('Left eye');
  });
});
