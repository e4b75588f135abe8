import { mount } from 'svelte';
import 'astigmatism-elements/define.js';
import Eye from './Eye.svelte';

mount(Eye, { target: document.getElementById('app') });
