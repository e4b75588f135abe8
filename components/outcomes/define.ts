import { define } from '../internal/define.js';
import { AstigOutcomes } from './outcomes.js';

define('astig-outcomes', AstigOutcomes);

declare global {
  interface HTMLElementTagNameMap {
    'astig-outcomes': AstigOutcomes;
  }
}
