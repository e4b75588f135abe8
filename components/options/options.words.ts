import { REASON_TEXT } from '../../core/options.js';
import type { Words } from '../internal/language/language.js';

export const optionsWords = {
  part: 'options',
  en: {
    // Headings; under those that sort, what the figure is.
    rank: 'Rank',
    plan: 'Plan',
    cautions: 'Cautions',
    reason: 'Reason',
    choose: 'Choose',
    remaining: 'Remaining',
    remainingIs: 'as expected',
    chance: 'Chance',
    chanceIs: 'of {$good} or less',
    surgery: 'Surgery',
    surgeryIs: 'how much',

    byChance: 'by chance, highest first',
    captionOne: '1 plan for the {$eye}, {$order}',
    caption: '{$count} plans for the {$eye}, {$order}',

    // A plan; its parts stand one after the other.
    nothingPlanned: 'nothing planned',
    entry: 'entry {$site} {$place}, {$width}',
    oneArc: 'one arc of {$length} at {$site}',
    twoArcs: 'two arcs of {$length} at {$site} and {$opposite}',
    lens: 'toric lens {$power} on {$meridian}',
    and: '{$first}; {$second}',

    // How much is done.
    noArc: 'no arc',
    arcDegrees: 'one arc, {$length}',
    arcsDegrees: 'two arcs, {$length} in all',
    lensPower: 'lens {$power}',
    noLens: 'no lens',
    entryWidth: 'entry {$width}',
    ofHundred: '{$eyes}\u00a0of\u00a0100',

    noCautions: 'none',
    countStop: '{$count}\u00a0×\u00a0stop',
    countThink: '{$count}\u00a0×\u00a0think',
    countNote: '{$count}\u00a0×\u00a0note',
    list: '{$first}, {$second}',
    caution: '{$level}:',
    source: 'source',

    use: 'Use this plan',
    inUse: 'In use',
    used: 'in use',
    number: ', number {$rank}',

    now: 'Now:',
    present: '{$plan}: {$astigmatism} remaining as expected, {$chance} end with {$good} or less.',
    listed: 'It is plan {$rank} of this list.',
    notListed: 'It is not in this list.',
    against: 'Arcs are not offered.',
    ownEntry: 'Own figures of this plan count in every row: {$entry} of flattening by the incision wherever it lies.',
    ownArcs: 'Own figures of this plan count in every row: {$arcs} by the arcs whatever their length.',
    ownBoth: 'Own figures of this plan count in every row: {$entry} of flattening by the incision wherever it lies, and {$arcs} by the arcs whatever their length.',

    offered: 'What may be offered',
    offeredEntry: 'entry {$places}',
    steep: 'steep',
    offeredNoArcs: 'no arcs',
    offeredArc: 'one arc',
    offeredArcs: 'up to two arcs',
    offeredLens: 'toric lens {$powers}',
    offeredLenses: 'toric lens 1 to 4\u00a0D',
    or: '{$first} or {$second}',

    nothing: 'No plan can be suggested within these limits.',
    moving: 'The eye is being changed: this list will be refreshed when you let go.',
    refreshing: 'The eye or the limits have changed: this list is being refreshed.',
    refusedCase: 'The page has set values that cannot be taken. The list is for the last good plan, and none can be chosen until this is mended:',
    refusedLimits: 'These limits cannot be taken. The list is by the last good ones:',

    // What a limit is called where it is refused.
    sites: 'Places of entry',
    widths: 'Widths of the blades',
    lenses: 'Cylinders of the lenses',
    'most-arcs': 'Most arcs',
    allowed: '{$min} to {$max}, at most {$most}, separated by spaces',
    allowedSites: 'temporal, superior, steep, or {$min} to {$max}, at most {$most}, separated by spaces',
    allowedArcs: '0, 1 or 2',

    ...REASON_TEXT,
  },
} as const satisfies Words;

export type OptionsId = keyof typeof optionsWords.en;
