import { define } from '../internal/define.js';
import { AstigSummary } from './summary.js';

define('astig-summary', AstigSummary);

declare global {
  interface HTMLElementTagNameMap {
    'astig-summary': AstigSummary;
  }
}
