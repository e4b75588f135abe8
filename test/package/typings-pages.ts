/** Pages for the checkers of the typings. Lines with `wrong:` must be found fault with, and no others. */

export const TYPESCRIPT = `
import 'astigmatism-elements/define.js';
import { AstigChangeEvent, type EyePlan } from 'astigmatism-elements';
import { evaluatePlan } from 'astigmatism-elements/core';
import { AstigCornea } from 'astigmatism-elements/cornea.js';
import type { AstigCase } from 'astigmatism-elements/case.js';

const held: AstigCase = document.querySelector('astig-case')!;
const cornea: AstigCornea = document.createElement('astig-cornea');
const plan: EyePlan = { flatK: 43, steepK: 44, backSurface: '0.30@180' };
held.plan = plan;
held.plan = null;
cornea.viewpoint = 'above';
held.addEventListener('astig-change', (event) => event.outcome.after.magnitude.toFixed(2));
document.body.addEventListener('astig-input', ({ plan: { incisionSite } }) => incisionSite?.toFixed(0));
if (new Event('x') instanceof AstigChangeEvent) evaluatePlan(held.plan).chanceWithin(0.5).toFixed(2);
held.eye = 'middle'; // wrong: no such eye
held.outcome = held.outcome; // wrong: follows from the plan
held.addEventListener('astig-change', (event) => event.detail); // wrong: no such field
evaluatePlan({ flatK: '43' }); // wrong: a text
document.createElement('astig-cornea').model; // wrong: internal
document.createElement('astig-cornea').cancel(); // wrong: internal
import('astigmatism-elements/internal/define.js'); // wrong: not published
`;

export const REACT = `
import type {} from 'astigmatism-elements/react';
import 'astigmatism-elements/define.js';
import { useRef } from 'react';
import type { AstigCase } from 'astigmatism-elements';

export function Page() {
  const held = useRef<AstigCase>(null);
  return (
    <astig-case
      ref={held}
      eye="right"
      flatK={43}
      steep-k="44"
      steep-meridian={180}
      age={70}
      plan={{ flatK: 43 }}
      className="plain"
      key="one"
      onastig-change={(event) => event.outcome.after.magnitude.toFixed(event.currentTarget.age ?? 0)}
    >
      <astig-cornea viewpoint="above" hideSpread read-only></astig-cornea>
      <astig-case age="70" arcCount="1" arc-site="90" />
      <astig-case eye="middle" /> {/* wrong: no such eye */}
      <astig-case outcome={null} /> {/* wrong: follows from the plan */}
      <astig-case onastig-change={(event: MouseEvent) => event} /> {/* wrong: another event */}
      <astig-cornea nonsense={1} /> {/* wrong: no such property */}
      <astig-corner /> {/* wrong: no such element */}
    </astig-case>
  );
}
`;

export const VUE = `
<script setup lang="ts">
import type {} from 'astigmatism-elements/vue';
import type { AstigChangeEvent } from 'astigmatism-elements';
const tell = (event: AstigChangeEvent) => event.outcome.after.magnitude;
</script>
<template>
  <astig-case eye="right" flat-k="43" :steep-k="44" :age="70" :plan="{ flatK: 43 }" class="plain" @astig-change="tell">
    <astig-cornea viewpoint="above" hide-spread read-only></astig-cornea>
    <astig-case age="70" arc-count="1" @astig-change="(event) => event.outcome.after.magnitude.toFixed(2)" />
    <astig-case eye="middle" /> <!-- wrong: no such eye -->
    <astig-cornea :viewpoint="3" /> <!-- wrong: a number -->
    <astig-case @astig-change="(event) => event.nonsense" /> <!-- wrong: no such field -->
  </astig-case>
</template>
`;

export const SVELTE = `
<script lang="ts">
  import type {} from 'astigmatism-elements/svelte';
  import 'astigmatism-elements/define.js';
</script>
<astig-case
  eye="right"
  flat-k="43"
  steepK={44}
  age={70}
  plan={{ flatK: 43 }}
  class="plain"
  onastig-change={(event) => event.outcome.after.magnitude.toFixed(event.currentTarget.age ?? 0)}
>
  <astig-cornea viewpoint="above" hide-spread read-only></astig-cornea>
  <astig-case age="70" arc-count="1" arcSite="90"></astig-case>
  <astig-case eye="middle"></astig-case> <!-- wrong: no such eye -->
  <astig-cornea viewpoint={3}></astig-cornea> <!-- wrong: a number -->
  <astig-case onastig-change={(event) => event.nonsense}></astig-case> <!-- wrong: no such field -->
  <astig-cornea nonsense={1}></astig-cornea> <!-- wrong: no such property -->
</astig-case>
`;
