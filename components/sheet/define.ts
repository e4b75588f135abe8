import { define } from '../internal/define.js';
import { AstigSheet } from './sheet.js';

define('astig-sheet', AstigSheet);

declare global {
  interface HTMLElementTagNameMap {
    'astig-sheet': AstigSheet;
  }
}
