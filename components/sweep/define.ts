import { define } from '../internal/define.js';
import { AstigSweep } from './sweep.js';

define('astig-sweep', AstigSweep);

declare global {
  interface HTMLElementTagNameMap {
    'astig-sweep': AstigSweep;
  }
}
