import type { CompletePlan, EyeSide } from '../../core/numbers.js';
import type { Language, Say } from '../internal/language/language.js';
import { layoutSweep } from './sweep.layout.js';
import type { SweepLayout } from './sweep.layout.js';
import { sweepDependsOn, sweepOf } from './sweep.parts.js';
import type { Sweep } from './sweep.parts.js';
import { layoutTexts, toldSweep } from './sweep.speech.js';
import type { ToldSweep } from './sweep.speech.js';
import { sweepWords } from './sweep.words.js';

type SweepSay = Say<keyof typeof sweepWords.en>;

/** Keeps what stays as it is while only the incision moves: the layout, the curve, and the texts on it. */
export class SweepMemory {
  private knownLayout: { key: string; say: SweepSay; layout: SweepLayout } | null = null;
  private knownSweep: { key: string; sweep: Sweep } | null = null;
  private knownTexts: { sweep: Sweep; say: SweepSay; numbers: string; told: ToldSweep } | null = null;

  constructor(private readonly language: Language) {}

  layout({ width, font, family }: { width: number; font: number; family: string }, eye: EyeSide): SweepLayout {
    const { numbers } = this.language;
    const key = `${width} ${font} ${family} ${eye} ${numbers}`;
    const say = this.language.say(sweepWords);
    if (this.knownLayout?.key !== key || this.knownLayout.say !== say) {
      this.knownLayout = { key, say, layout: layoutSweep({ width, font, family, texts: layoutTexts(eye, this.language) }) };
    }
    return this.knownLayout.layout;
  }

  sweep(plan: CompletePlan, withBand: boolean): Sweep {
    const key = sweepDependsOn(plan, withBand);
    if (this.knownSweep?.key !== key) this.knownSweep = { key, sweep: sweepOf(plan, withBand) };
    return this.knownSweep.sweep;
  }

  /** Stays with its curve until the language or a text changes. */
  told(sweep: Sweep, eye: EyeSide): ToldSweep {
    const { numbers } = this.language;
    const say = this.language.say(sweepWords);
    const { knownTexts: known } = this;
    if (known?.sweep === sweep && known.say === say && known.numbers === numbers) return known.told;
    const told = toldSweep(sweep, eye, this.language);
    this.knownTexts = { sweep, say, numbers, told };
    return told;
  }
}
