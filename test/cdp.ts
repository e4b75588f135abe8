import { executeServerCommand } from '@web/test-runner-commands';
import type { CDPSession } from 'puppeteer-core';

/**
 * Sends one DevTools command to the page under test and answers with its result, typed by the protocol:
 * `await cdp('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] })`.
 * Coordinates are CSS px of the viewport, as clientX and clientY. What is emulated lasts until the test file ends.
 */
export const cdp: CDPSession['send'] = (method, params) => executeServerCommand('cdp', { method, params });
