import type { ComplexAttributeConverter } from 'lit';
import { DECIMAL } from './decimal.js';

/** Numbers in attributes. Nothing and `none` are none; what is no number is kept as it is, so that its refusal can quote it. */
export const numberConverter: ComplexAttributeConverter<number | null> = {
  fromAttribute(text) {
    const trimmed = text?.trim() ?? '';
    if (trimmed === '' || trimmed === 'none') return null;
    return DECIMAL.test(trimmed) ? Number(trimmed) : (text as unknown as number);
  },
  toAttribute: (value) => (value === null ? null : String(value)),
};
