import type { CautionLevel, EyeSide, Rule, StepSource } from '../../core/numbers.js';

/** Words that several elements share. One place, so that they can be put into other languages. */
export const EYE_NAME: Record<EyeSide, string> = { right: 'Right eye', left: 'Left eye' };

export const RULE_NAME: Record<Rule, string> = { with: 'with the rule', against: 'against the rule', oblique: 'oblique' };

export const LEVEL_NAME: Record<CautionLevel, string> = { stop: 'Stop', think: 'Think', note: 'Note' };

export const STEP_NAME: Record<StepSource, string> = {
  backSurface: 'back surface',
  incision: 'incision',
  arcs: 'arcs',
  lens: 'toric lens',
};

/** The name of a step, in the singular where one arc is planned. */
export function stepName(source: StepSource, arcCount: number): string {
  return source === 'arcs' && arcCount === 1 ? 'arc' : STEP_NAME[source];
}

export const NO_CASE = 'Nothing to show yet: this needs an astig-case around it, or its id in “for”.';

/** Opens where a figure comes from. */
export const SOURCE = 'Source';
export const SOURCE_OF_SPREAD = 'Source of the uncertainty';

export const ESTIMATE =
  'Estimates for teaching and discussion. The surgeon’s own measurements, local rules and licensed judgement decide.';
