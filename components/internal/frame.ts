let coming: Promise<unknown> | null = null;

/** The next frame, the same for all who wait for it: each request of its own costs as much as a small drawing. */
export function nextFrame(): Promise<unknown> {
  return (coming ??= new Promise(requestAnimationFrame).then(() => (coming = null)));
}
