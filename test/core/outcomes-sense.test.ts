/** One word more or less in a heading, and what it makes of it. The words themselves: `outcomes-words.test.ts`. */
import { describe, expect, test } from 'vitest';
import { OUTCOME_COLUMNS, type OutcomeColumn, type OutcomeWording } from '../../core/outcomes.js';
import { columnOf, unitAgainst } from '../../core/outcomes-sense.js';

/** Column that is taken, or what is asked, or `nothing`. */
function taken(heading: string): OutcomeColumn | OutcomeWording | 'nothing' {
  const { column, why } = columnOf(heading);
  // Only where the number of a reading stands for its end is a column both taken and asked about.
  expect([heading, column !== null && why !== null]).toEqual([heading, column !== null && why?.id === 'guess']);
  return column ?? why?.id ?? 'nothing';
}

test('the name of a column is understood in any case and with spaces about it', () => {
  for (const column of OUTCOME_COLUMNS) {
    for (const heading of [column, ` ${column}`, `${column}\t`, column.toUpperCase()]) expect([heading, columnOf(heading)]).toEqual([heading, { column, why: null }]);
  }
});

describe('what is asked', () => {
  const ASKED: Partial<Record<OutcomeWording | 'nothing', string[]>> = {
    // Half of a heading of the cornea: all but the time.
    noTime: ['flat K', 'steep K', 'K1', 'R2', 'astigmatism', 'meridian'],
    axisUnclear: ['axis before', 'axis after', 'axis of the astigmatism after'],
    person: ['Name', 'Patient name', 'Date of birth', 'Geburtsdatum', 'nombre y apellidos', 'prénom'],
    readingOrMeridian: [
      'meridian of the astigmatism before', 'steep axis of the cylinder before', 'R2 axis before', 'R2 meridian after',
      'astigmatism, power of the steep meridian before (D)', 'steep meridian before (mm)', 'K meridian before (D)',
    ],
    severalThings: [
      'flat and steep K', 'flat and steep axis before', 'flat and steep meridian after (°)', 'K1 and K2 axis before',
      // What stands with a time belongs to the cornea, and the incision only says which time.
      'astigmatism before incision', 'astigmatism after incision', 'flat K before incision', 'steep K after the wound',
      'lens on the flat meridian', 'lens cylinder and axis (D)',
      // Two sites in one column.
      'incision site and arc site', 'site of incision and position of arcs',
      'arc length beside a toric lens',
    ],
    // Without a time there is nothing of the cornea to be taken, and no column for what is left.
    nothing: ['astigmatism of the incision', 'Lens', 'IOL power', 'Lens model', 'Planned date', 'target', 'remaining after', 'planned K'],
  };
  test.each(Object.entries(ASKED).flatMap(([id, headings]) => headings.map((heading) => [heading, id] as const)))('%s: %s', (heading, id) =>
    expect(taken(heading)).toBe(id));

  // A cut is on the cornea, but its site is no reading of it: with any of these words the figures may be either.
  const CORNEAL = ['before', 'after', 'flat', 'steep', 'astigmatism', 'remaining', 'posterior', 'right eye'];
  test.each(CORNEAL)('%s beside a cut or a lens', (word) => {
    for (const heading of ['incision site', 'incision width', 'arc site', 'arc length', 'number of arcs', 'arc method']) {
      expect(taken(heading)).not.toBe('severalThings');
      expect([`${heading}, ${word}`, taken(`${heading}, ${word}`)]).toEqual([`${heading}, ${word}`, 'severalThings']);
    }
  });
  test.each(['before', 'after', 'incision', 'remaining', 'total', 'right eye'])('%s beside the axis or the cylinder of a lens', (word) => {
    expect(taken('lens axis')).toBe('lensMeridian');
    expect(taken('lens cylinder at the cornea')).toBe('lensCylinder');
    for (const heading of [`lens axis, ${word}`, `lens cylinder at the cornea, ${word}`]) expect([heading, taken(heading)]).toEqual([heading, 'severalThings']);
  });
});

describe('what is taken', () => {
  test.each([
    ['steep before (D)', 'steepBefore'], ['flat after (D)', 'flatAfter'], ['steep meridian reading before (mm)', 'steepBefore'], ['flat radius before', 'flatBefore'], ['steep radius after', 'steepAfter'],
    ['flat K1 before', 'flatBefore'], ['steep K2 after', 'steepAfter'], ['lens cylinder axis (°)', 'lensMeridian'],
    // A zone of 9 mm says nothing against a count.
    ['Number of arcs, 9 mm', 'arcCount'], ['astigmatism before', 'magnitudeBefore'], ['steep meridian after', 'meridianAfter'], ['predicted residual', 'predictedMagnitude'],
  ] as const)('%s is %s, and there is nothing to check', (heading, column) => expect(columnOf(heading)).toEqual({ column, why: null }));

  test.each([['K1 before', 'flatBefore'], ['K2 after', 'steepAfter'], ['R1 before', 'flatBefore'], ['R2 before', 'steepBefore']] as const)('%s is %s by custom, and the reader is told so', (heading, column) => {
    const { column: found, why } = columnOf(heading);
    expect([found, why]).toMatchObject([column, { id: 'guess', values: { column } }]);
  });
});

describe('a unit speaks against a column', () => {
  const UNITS = ['D', 'mm', '°'] as const;
  /** In what each may be given; the others have no unit. */
  const GIVEN: Partial<Record<OutcomeColumn, (typeof UNITS)[number][]>> = {
    flatBefore: ['D', 'mm'], steepBefore: ['D', 'mm'], flatAfter: ['D', 'mm'], steepAfter: ['D', 'mm'],
    magnitudeBefore: ['D'], magnitudeAfter: ['D'], predictedMagnitude: ['D'], lensCylinder: ['D'],
    meridianBefore: ['°'], meridianAfter: ['°'], predictedMeridian: ['°'], lensMeridian: ['°'], incisionSite: ['°'], arcSite: ['°'], arcLength: ['°'],
    incisionWidth: ['mm'],
  };

  test.each(OUTCOME_COLUMNS)('%s: when it is another than its own', (column) => {
    expect(unitAgainst('no unit', column)).toBeNull();
    for (const unit of UNITS) {
      const why = unitAgainst(`x (${unit})`, column);
      if (GIVEN[column]?.includes(unit) ?? true) expect([unit, why]).toEqual([unit, null]);
      else expect(why).toMatchObject({ id: 'unitUnlike', values: { column, unit } });
    }
  });
});
