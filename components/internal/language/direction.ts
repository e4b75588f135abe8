/** Languages that are written from right to left, among those with many readers. */
const RIGHT_TO_LEFT = /^(ar|ckb|dv|fa|he|ps|sd|ug|ur|yi)\b/;

/** Which way a language runs. */
export function directionOf(lang: string): 'ltr' | 'rtl' {
  return RIGHT_TO_LEFT.test(lang) ? 'rtl' : 'ltr';
}
