import { define } from '../internal/define.js';
import { AstigCase } from './case.js';

define('astig-case', AstigCase);

declare global {
  interface HTMLElementTagNameMap {
    'astig-case': AstigCase;
  }
}
