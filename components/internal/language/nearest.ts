import { upwards } from '../tree.js';

/** Language where the page names none. */
const DEFAULT = 'en';

/** Value of the nearest `lang`, going up through slots and shadow roots. */
export function nearestLanguage(element: Element): string {
  for (const node of upwards(element)) {
    const lang = (node as Partial<Element>).getAttribute?.('lang');
    if (lang) return lang;
  }
  return DEFAULT;
}

/** One observer for each tree, however many elements stand in it. */
const watches = new Map<Node, { observer: MutationObserver; followers: Set<() => void> }>();

/** Calls back when a `lang` around the element may have changed; returns what ends that. */
export function watchLanguage(element: Element, follower: () => void): () => void {
  // Every tree on the way ends in its root, also one that lies around a slot.
  const roots = [...upwards(element)].filter(({ nodeType }) => nodeType === Node.DOCUMENT_NODE || nodeType === Node.DOCUMENT_FRAGMENT_NODE);
  for (const root of roots) followersIn(root).add(follower);
  return () => {
    for (const root of roots) {
      const watch = watches.get(root);
      watch?.followers.delete(follower);
      if (!watch || watch.followers.size > 0) continue;
      watch.observer.disconnect();
      watches.delete(root);
    }
  };
}

function followersIn(root: Node): Set<() => void> {
  const known = watches.get(root);
  if (known) return known.followers;
  const followers = new Set<() => void>();
  const observer = new MutationObserver(() => {
    for (const follower of followers) follower();
  });
  observer.observe(root, { attributes: true, attributeFilter: ['lang', 'slot'], subtree: true });
  watches.set(root, { observer, followers });
  return followers;
}
