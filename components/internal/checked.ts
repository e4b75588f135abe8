import { ref } from 'lit/directives/ref.js';

/**
 * Keeps a box or radio button as the plan has it, whatever the user has clicked. To be put into the tag, after
 * `?checked`: a server would write the property out as an attribute, which checks whatever its value is.
 */
export function checkedAs(on: boolean): ReturnType<typeof ref> {
  return ref((input) => {
    if (input) (input as HTMLInputElement).checked = on;
  });
}
