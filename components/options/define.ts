import { define } from '../internal/define.js';
import { AstigOptions } from './options.js';

define('astig-options', AstigOptions);

declare global {
  interface HTMLElementTagNameMap {
    'astig-options': AstigOptions;
  }
}
