import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { references } from '../core/index.js';
import type { EyePlan, OwnFigures } from '../core/index.js';
import { INVENTED, eyeOf } from './day-list.js';
import { groupResults } from './group-results.js';

const meta: Meta = { title: 'How sure is this?' };
export default meta;

/** Figures of a surgeon with a long and even series: invented. */
const OWN: OwnFigures = { incision: { flattening: 0.25, torque: 0, sd: 0.15, eyes: 240 }, arcs: { share: 0.6, sdAlong: 0.15, sdAcross: 0.15, eyes: 60 } };

/** The same eye measured well, measured with a dry eye, and planned by somebody who knows the own results. */
export const GoodAndPoor: StoryObj = {
  name: 'Good and poor measurements',
  render: () => html`<p class="invented">${INVENTED}</p>
    <p>The same eye and the same plan three times. Only what is known of them differs.</p>
    <div class="grid three">
      ${column('Measured well', eyeOf('Cedar').plan)}
      ${column('Readings of a severely dry eye', { ...eyeOf('Cedar').plan, risks: 'dry-eye' })}
      ${column('With the surgeon’s own figures (invented)', { ...eyeOf('Cedar').plan, ownFigures: OWN })}
    </div>`,
};

/** What the model gives for the groups of the papers that it was chosen on. */
export const GroupResults: StoryObj = {
  name: 'Published groups of eyes',
  render: () => html`<h2>Published groups of eyes, and the same groups by the default model</h2>
    <p><strong>The model is consistent with these papers. It is not validated on them:</strong> its figures were chosen so that they agree with the same papers, and no other data were used.</p>
    <table class="figures">
      <thead>
        <tr><th scope="col">Group</th><th scope="col">Quantity</th><th scope="col">Published</th><th scope="col">Model</th><th scope="col">Paper</th></tr>
      </thead>
      <tbody>
        ${groupResults().map(
          ({ group, quantity, published, model, source, remark }) =>
            html`<tr><th scope="row">${group}</th><td>${quantity}</td><td>${published}</td><td>${model}</td><td>${paper(source)}${remark && html` (${remark})`}</td></tr>`,
        )}
      </tbody>
    </table>`,
};

function paper(source: keyof typeof references): string {
  const { authors, journal, year } = references[source];
  return `${authors.split(',')[0]}, ${journal} ${year}`;
}

function column(title: string, plan: EyePlan): TemplateResult {
  return html`<section>
    <h2>${title}</h2>
    <astig-case .plan=${plan}><astig-vectors></astig-vectors><astig-summary></astig-summary></astig-case>
  </section>`;
}
