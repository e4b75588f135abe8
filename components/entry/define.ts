import { define } from '../internal/define.js';
import { AstigEntry } from './entry.js';

define('astig-entry', AstigEntry);

declare global {
  interface HTMLElementTagNameMap {
    'astig-entry': AstigEntry;
  }
}
