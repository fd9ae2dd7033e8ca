const board = document.querySelector('#board');
const ramp = document.querySelector('windlass-calculator');

ramp.addEventListener('windlass-result', ({ detail }) => {
  const { headline, says } = detail;
  board.textContent = headline ? `${headline.label}: ${headline.value} ${headline.unit}` : says;
});

for (const button of document.querySelectorAll('[data-work]')) {
  button.addEventListener('click', () => {
    const { work } = button.dataset;
    ramp.setAttribute('units', work.endsWith('lb') ? 'lb' : 'kg');
    ramp.setAttribute('work', work);
  });
}
