/** Whether a slide deck decides which step is shown: then its fragments are steps, which it marks `visible` one by one. */
export function byDeck(steps: readonly Element[]): boolean {
  return steps.some((step) => step.classList.contains('fragment'));
}

/** Number of the step that the deck has reached: the last that is no fragment still to come. */
export function deckStep(steps: readonly Element[]): number {
  const last = steps.findLastIndex(({ classList }) => !classList.contains('fragment') || classList.contains('visible'));
  return Math.max(1, last + 1);
}

/** Whether the deck has uncovered the answer to a question: a fragment inside the step that asks. */
export function answered(step: Element): boolean {
  return step.querySelector('.fragment.visible') !== null;
}
