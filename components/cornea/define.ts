import { define } from '../internal/define.js';
import { AstigCornea } from './cornea.js';

define('astig-cornea', AstigCornea);

declare global {
  interface HTMLElementTagNameMap {
    'astig-cornea': AstigCornea;
  }
}
