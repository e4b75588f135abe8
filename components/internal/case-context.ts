import { createContext } from '@lit/context';
import type { CaseModel } from './case-model.js';

/** By this an `<astig-case>` hands its model to the elements inside it. */
export const caseContext = createContext<CaseModel>(Symbol.for('astigmatism-elements/case'));
