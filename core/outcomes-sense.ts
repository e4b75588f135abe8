import { said } from './outcomes-text.js';
import type { OutcomeWording } from './outcomes-text.js';
import { OUTCOME_COLUMNS } from './outcomes-types.js';
import type { Heading, OutcomeColumn } from './outcomes-types.js';
import { ideasIn, inDegrees, unitIn } from './outcomes-words.js';
import type { Idea } from './outcomes-words.js';

type Match = Pick<Heading, 'column' | 'why'>;
type Has = (...wanted: Idea[]) => boolean;
type Unit = 'D' | 'mm' | '°' | null;

const NONE: Match = { column: null, why: null };

const is = (column: OutcomeColumn): Match => ({ column, why: null });
const ask = (id: OutcomeWording): Match => ({ column: null, why: said(id) });

/**
 * The column that a heading names. What could mean two things is asked about and not guessed at: a reading taken for a
 * meridian, or the flat meridian for the steep one, could hurt someone.
 */
export function columnOf(text: string): Match {
  const named = OUTCOME_COLUMNS.find((column) => column.toLowerCase() === text.trim().toLowerCase());
  if (named) return is(named);
  const ideas = ideasIn(text);
  const has: Has = (...wanted) => wanted.some((idea) => ideas.has(idea));
  const match = meant(has, unitOf(text));
  const against = match.column && unitAgainst(text, match.column);
  return against ? { column: null, why: against } : match;
}

function unitOf(text: string): Unit {
  return inDegrees(text) ? '°' : unitIn(text);
}

/** What speaks against a column where the heading names a unit in which it is not given. */
export function unitAgainst(text: string, column: OutcomeColumn): Heading['why'] {
  const unit = unitOf(text);
  const units = unitsOf(column);
  return unit && units.length > 0 && !units.includes(unit) ? said('unitUnlike', { column, unit }) : null;
}

function unitsOf(column: OutcomeColumn): Unit[] {
  if (/^(flat|steep)/.test(column)) return ['D', 'mm'];
  if (/^magnitude|Magnitude$|Cylinder$/.test(column)) return ['D'];
  if (column === 'incisionWidth') return ['mm'];
  return /meridian|Meridian|Site$|^arcLength/.test(column) ? ['°'] : [];
}

function meant(has: Has, unit: Unit): Match {
  if (has('arc')) return arc(has);
  if (has('lens')) return lens(has, unit);
  if (has('incision')) return incision(has);
  if (has('planned', 'before', 'after') || has('flat', 'steep', 'first', 'second', 'magnitude', 'meridian')) return corneal(has, unit);
  if (has('person')) return ask('person');
  if (has('label')) return is('label');
  if (has('age')) return is('age');
  return has('eye') ? is('eye') : NONE;
}

/** The only one of these that a heading speaks of. */
function only(has: Has, choices: readonly (readonly [OutcomeColumn, Idea[]])[]): Match {
  const found = choices.filter(([, ideas]) => has(...ideas));
  return found.length === 1 ? is(found[0]![0]) : found.length ? ask('severalThings') : NONE;
}

/** What is said of the cornea, beside something else: of "astigmatism before the incision" neither may be taken alone. */
const CORNEAL: Idea[] = ['before', 'after', 'flat', 'steep', 'magnitude', 'rest', 'elsewhere', 'side'];

function arc(has: Has): Match {
  const match = only(has, [['arcMethod', ['method']], ['arcCount', ['count']], ['arcLength', ['length']], ['arcLength', ['width']], ['arcSite', ['site', 'meridian', 'axis']]]);
  return match.column && has(...CORNEAL, 'lens', 'zone', 'sites') ? ask('severalThings') : match;
}

function incision(has: Has): Match {
  const match = only(has, [['incisionWidth', ['width', 'length']], ['incisionSite', ['site', 'meridian', 'axis']]]);
  return (match.column && has(...CORNEAL, 'zone')) || (!match.column && has('before', 'after') && has('magnitude', 'flat', 'steep')) ? ask('severalThings') : match;
}

/** A lens has its cylinder at its own plane, which is more than at the cornea. */
function lens(has: Has, unit: Unit): Match {
  const turned = has('meridian', 'axis');
  if (!turned && !has('magnitude')) return NONE;
  if (has('before', 'after', 'incision', 'rest', 'elsewhere', 'side') || (turned && (has('flat') || (has('magnitude') && unit !== '°')))) return ask('severalThings');
  return turned ? is('lensMeridian') : has('cornea') ? is('lensCylinder') : ask('lensPlane');
}

type Kind = 'flat' | 'steep' | 'magnitude' | 'meridian';

function corneal(has: Has, unit: Unit): Match {
  const { kind, doubt } = has('meridian', 'axis') ? turned(has, unit) : upright(has, unit);
  if (!kind && !doubt) return NONE;
  if (has('side')) return ask('oneSide');
  if (has('elsewhere') || (has('rest') && !has('planned'))) return ask('elsewhere');
  if (has('planned')) return has('before') ? ask('severalThings') : planned(kind, doubt);
  if (doubt === 'severalThings') return ask(doubt);
  if (has('before') === has('after') || has('frontFace')) return ask('noTime');
  if (doubt) return ask(doubt);
  const column = `${kind!}${has('before') ? 'Before' : 'After'}` as const;
  return { column, why: has('flat', 'steep') || !has('first', 'second') ? null : said('guess', { column }) };
}

function planned(kind: Kind | null, doubt: OutcomeWording | null): Match {
  if (doubt) return ask(doubt);
  return kind === 'magnitude' ? is('predictedMagnitude') : kind === 'meridian' ? is('predictedMeridian') : NONE;
}

interface Sense {
  kind: Kind | null;
  doubt: OutcomeWording | null;
}

const sure = (kind: Kind | null): Sense => ({ kind, doubt: null });
const unsure = (doubt: OutcomeWording): Sense => ({ kind: null, doubt });

/** Which end is spoken of; `null` for both. K1 and K2 are the usual numbers of flat and steep. */
function endOf(has: Has): 'flat' | 'steep' | 'none' | null {
  const [flat, steep] = [has('flat', 'first'), has('steep', 'second')];
  return flat && steep ? null : flat ? 'flat' : steep ? 'steep' : 'none';
}

/** With a word for a meridian or an axis: the figures may be degrees, or what was read along it. */
function turned(has: Has, unit: Unit): Sense {
  const end = endOf(has);
  if (end === null) return unsure('severalThings');
  if (end === 'flat') return unsure('flatMeridian');
  if (has('steep') && unit === '°') return sure('meridian');
  if (has('magnitude') && !has('meridian', 'steep')) return unsure('axisUnclear');
  if (has('steep') && (unit === 'D' || unit === 'mm')) return has('reading') && !has('magnitude') ? sure('steep') : unsure('readingOrMeridian');
  if (has('reading', 'second', 'magnitude')) return unsure('readingOrMeridian');
  return has('steep') ? sure('meridian') : unsure(has('meridian') ? 'steepUnclear' : 'axisUnclear');
}

/** Without one. */
function upright(has: Has, unit: Unit): Sense {
  const end = endOf(has);
  if (end === null) return unsure('severalThings');
  if (has('magnitude')) return end === 'none' ? (unit === '°' ? unsure('readingOrMeridian') : sure('magnitude')) : unsure('severalThings');
  if (end === 'none') return sure(has('planned') && has('rest') ? 'magnitude' : null);
  const read = has('reading', 'first', 'second') || unit === 'D' || unit === 'mm';
  return read && unit !== '°' ? sure(end) : unsure('readingOrMeridian');
}
