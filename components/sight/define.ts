import { define } from '../internal/define.js';
import { AstigSight } from './sight.js';

define('astig-sight', AstigSight);

declare global {
  interface HTMLElementTagNameMap {
    'astig-sight': AstigSight;
  }
}
