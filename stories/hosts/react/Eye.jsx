import { useState } from 'react';
import { inventedEye } from '../invented-eye.js';

/** The plan is React's state: it goes in as a property, and comes back with the event. */
export function Eye() {
  const [plan, setPlan] = useState(inventedEye);
  const [heard, setHeard] = useState('nothing yet');
  const [shown, setShown] = useState(true);

  function onChange({ plan, outcome, source }) {
    setPlan(plan);
    setHeard(`${source}: ${outcome.after.magnitude.toFixed(2)} D`);
  }

  return (
    <>
      <label>
        Width, mm <input type="number" min="1.8" max="3.5" step="0.05" value={plan.incisionWidth} onChange={({ target }) => setPlan({ ...plan, incisionWidth: target.valueAsNumber })} />
      </label>
      <button onClick={() => setPlan({ ...plan, incisionSite: 90 })}>Enter at 90°</button>
      <button onClick={() => setShown(!shown)}>Summary</button>
      <output>{heard}</output>
      <astig-case plan={plan} onastig-change={onChange}>
        <astig-cornea viewpoint="above" />
        {shown && <astig-summary />}
      </astig-case>
    </>
  );
}
