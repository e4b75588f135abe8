/** The colours of the system as they are written when computed: all that may be seen where colours are forced. */
export function systemColours(): string[] {
  const probe = document.createElement('i');
  document.body.append(probe);
  const colours = ['Canvas', 'CanvasText', 'LinkText', 'Highlight', 'GrayText'].map((name) => {
    probe.setAttribute('style', `color: ${name}; forced-color-adjust: none`);
    return getComputedStyle(probe).color;
  });
  probe.remove();
  return colours;
}
