import { define } from '../internal/define.js';
import { AstigVectors } from './vectors.js';

define('astig-vectors', AstigVectors);

declare global {
  interface HTMLElementTagNameMap {
    'astig-vectors': AstigVectors;
  }
}
