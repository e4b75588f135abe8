import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import 'astigmatism-elements/define.js';
import { Eye } from './Eye.jsx';

createRoot(document.getElementById('app')).render(
  <StrictMode>
    <Eye />
  </StrictMode>,
);
