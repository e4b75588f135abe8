import { EDGE, figureSize } from '../internal/layout.js';
import { textSize } from '../internal/measure.js';

/** Shares of the width of the drawing. Its height is one too: what a server has drawn for another width must not grow or shrink in the page. */
const SHARE = { depth: 0.44, across: 0.25, height: 1.2, dial: 0.15 } as const;

/** What stays the same while plan and view change, CSS px. */
export interface PencilLayout {
  width: number;
  height: number;
  /** Half the depth and half the width of what is drawn in depth, and half the room for it. */
  depth: number;
  across: number;
  half: number;
  halfHeight: number;
  /** The patch from the front: centre and radius of its dial. */
  dial: { x: number; y: number; radius: number };
  /** The depth alone: its ends. */
  ruler: { left: number; right: number };
  font: { small: number; family: string };
}

/** The bundle in depth above, the patch below. The origin is in the middle of the bundle. */
export function layoutPencil({ width, font, family }: { width: number; font: number; family: string }): PencilLayout {
  const small = figureSize(font, width);
  const { width: figure, height } = textSize('180°', small, family);
  const radius = Math.max(SHARE.dial * width, 3 * small);
  const x = EDGE + figure + radius + small - width / 2;
  const beside = 2 * (radius + height + EDGE);
  const halfHeight = Math.round((SHARE.height * width - height - beside) / 2);
  return {
    width,
    height: SHARE.height * width,
    depth: SHARE.depth * width,
    across: SHARE.across * width,
    half: width / 2 - EDGE,
    halfHeight,
    dial: { x, y: halfHeight + height + beside / 2, radius },
    ruler: { left: x + radius + figure + 1.5 * small, right: width / 2 - small },
    font: { small, family },
  };
}
