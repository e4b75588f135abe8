import { define } from '../internal/define.js';
import { AstigPencil } from './pencil.js';

define('astig-pencil', AstigPencil);

declare global {
  interface HTMLElementTagNameMap {
    'astig-pencil': AstigPencil;
  }
}
