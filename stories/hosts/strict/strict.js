document.querySelector('button').addEventListener('click', () => {
  document.documentElement.lang = 'de';
});
