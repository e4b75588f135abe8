import { define } from '../internal/define.js';
import { AstigExplain } from './explain.js';

define('astig-explain', AstigExplain);

declare global {
  interface HTMLElementTagNameMap {
    'astig-explain': AstigExplain;
  }
}
