import { createApp } from 'vue';
import 'astigmatism-elements/define.js';
import Eye from './Eye.vue';

createApp(Eye).mount('#app');
