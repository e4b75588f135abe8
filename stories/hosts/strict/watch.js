// A script of its own that runs first: nothing that is loaded later shall go unnoticed.
globalThis.violations = [];
document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) => {
  globalThis.violations.push(`${violatedDirective} ${blockedURI} ${sample}`);
  document.querySelector('output').value = `${globalThis.violations.length} violations`;
});
