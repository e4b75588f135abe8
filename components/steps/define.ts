import { define } from '../internal/define.js';
import { AstigStep } from './step.js';
import { AstigSteps } from './steps.js';

define('astig-step', AstigStep);
define('astig-steps', AstigSteps);

declare global {
  interface HTMLElementTagNameMap {
    'astig-step': AstigStep;
    'astig-steps': AstigSteps;
  }
}
