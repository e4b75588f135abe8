import { FIGURES } from '../../core/figures.js';
import type { Figure, FigureId } from '../../core/figures.js';
import { MODEL } from '../../core/model.js';
import type { ModelConstant } from '../../core/model.js';
import { references } from '../../core/references.js';
import type { SourceId } from '../../core/references.js';
import type { Words } from './language/language.js';

/** Prose of a figure; the rest of it are numbers and sources. */
const PROSE = ['title', 'what', 'formula', 'range'] as const satisfies readonly (keyof Figure)[];

export type FigureTextId = `${FigureId}.${(typeof PROSE)[number]}`;

/** What is said of each figure, by its name and that of the text: `arcs.formula`. */
export const figureWords: Words<FigureTextId> = {
  part: 'figures',
  en: Object.fromEntries(
    Object.entries(FIGURES).flatMap(([id, figure]) => PROSE.map((name) => [`${id}.${name}`, figure[name]])),
  ) as Record<FigureTextId, string>,
};

/** Names of the constants that figures stand on: `arcs.bladeShare`. */
const names = new Map<ModelConstant<unknown>, string>(
  Object.entries(MODEL).flatMap(([group, constants]) => Object.entries(constants).map(([name, constant]) => [constant, `${group}.${name}`])),
);

/** What is said of each constant that a figure stands on. */
export const constantWords: Words = {
  part: 'constants',
  en: Object.fromEntries(Object.values(FIGURES).flatMap(({ constants }) => constants.map((constant) => [nameOf(constant), constant.note]))),
};

export function nameOf(constant: ModelConstant<unknown>): string {
  return names.get(constant)!;
}

/** What is taken from each source. */
export const referenceWords: Words<SourceId> = {
  part: 'references',
  en: Object.fromEntries(Object.entries(references).map(([id, { use }]) => [id, use])) as Record<SourceId, string>,
};
