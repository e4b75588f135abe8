import { movesNativeSlider } from '../internal/key-step.js';
import { isNumberSetting, typedNumber } from './sight.settings.js';
import type { GivenSettings, NumberSetting, WordSetting } from './sight.settings.js';

/** What the controls set. */
interface Host extends GivenSettings {
  divider: number;
  requestUpdate(): void;
}

/** What the user does with the controls becomes settings. Their native events end here: the element has no value of its own. */
export class Inputs {
  /** Texts that are being typed and not yet taken. */
  readonly typed = new Map<NumberSetting, string>();

  constructor(private readonly host: Host) {}

  readonly onInput = (event: Event): void => {
    // A native input event is composed and would reach the host page.
    event.stopPropagation();
    const { name, type, value } = event.target as HTMLInputElement;
    if (type === 'range') this.host.divider = Number(value);
    else if (isNumberSetting(name)) this.typed.set(name, value);
  };

  readonly onChange = (event: Event): void => {
    event.stopPropagation();
    const { name, type, value, checked } = event.target as HTMLInputElement;
    if (type === 'checkbox') this.host.glasses = checked;
    else if (type === 'radio') this.choose(name as WordSetting, value);
    else this.take(name);
  };

  /** Not every way out of a field makes it fire `change`. */
  readonly onFocusout = ({ target }: FocusEvent): void => this.take((target as HTMLInputElement).name);

  readonly onKeydown = (event: KeyboardEvent): void => {
    const { type, name } = event.target as HTMLInputElement;
    // A slide deck around the element shall not turn its page.
    if (type && movesNativeSlider(event.key)) event.stopPropagation();
    if (!isNumberSetting(name) || !this.typed.has(name)) return;
    // While a text is unfinished, the browser's own undo works on the text, not the case's on the plan.
    if ((event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key)) event.stopPropagation();
    if (event.key !== 'Escape') return;
    this.typed.delete(name);
    this.host.requestUpdate();
    event.preventDefault();
    event.stopPropagation();
  };

  private choose(name: WordSetting, value: string): void {
    // A distance at which one reads is none from which one looks at a chart.
    if (name === 'scene') this.host.distance = null;
    this.host[name] = value;
  }

  /** A field is left or Enter was pressed: what was typed is taken, or refused. */
  private take(name: string): void {
    const text = isNumberSetting(name) ? this.typed.get(name) : undefined;
    if (!isNumberSetting(name) || text === undefined) return;
    this.typed.delete(name);
    this.host[name] = typedNumber(text);
    this.host.requestUpdate();
  }
}
