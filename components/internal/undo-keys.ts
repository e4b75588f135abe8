import type { CaseModel } from './case-model.js';

/** Takes back or does again at the usual keys: Ctrl or Cmd with Z, with Shift and Z, or with Y. */
export function undoByKey(event: KeyboardEvent, model: CaseModel, source: string): void {
  const key = event.key.toLowerCase();
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
  const back = key === 'z' && !event.shiftKey;
  const forth = (key === 'z' && event.shiftKey) || (key === 'y' && !event.shiftKey);
  if (!(back ? model.canUndo : forth && model.canRedo)) return;
  event.preventDefault();
  if (back) model.undo(`${source} undo`);
  else model.redo(`${source} redo`);
}
