/** A plain decimal number. Exponents and hexadecimals are slips, not dioptres, in an attribute as in a form. */
export const DECIMAL = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/;
