/** Seeded chance, so that what a monkey found can be found again. */
export interface Chance {
  /** Evenly in [0, 1). */
  next(): number;
  whole(below: number): number;
  between(min: number, max: number): number;
  one<T>(list: readonly T[]): T;
  yes(share: number): boolean;
}

/** The generator known as mulberry32: 32 bits of state are plenty for some ten thousand actions. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const whole = (below: number): number => Math.floor(next() * below);
  return {
    next,
    whole,
    between: (min, max) => min + (max - min) * next(),
    one: (list) => list[whole(list.length)]!,
    yes: (share) => next() < share,
  };
}
