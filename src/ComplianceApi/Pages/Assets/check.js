// The start page: checks one record through the service's own route and leads to what it shows.
const form = document.getElementById('check');
const said = document.getElementById('said');

form.addEventListener('submit', async (event) => {
  event.preventDefault();
  const button = form.querySelector('button');
  button.disabled = true;
  say(['Checking …']);
  try {
    const answer = await fetch('/v1/evaluations', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: form.elements.record.value,
    });
    const body = await answer.json();
    if (answer.ok) {
      location.assign(`/evaluations/${body.evaluationId}`);
    } else {
      say([`${body.title}. ${body.detail ?? ''}`, ...(body.errors ?? []).map((fault) => `${fault.pointer ?? fault.parameter}: ${fault.detail}`)]);
    }
  } catch {
    say(['The service does not answer.']);
  } finally {
    button.disabled = false;
  }
});

document.getElementById('find').addEventListener('submit', (event) => {
  event.preventDefault();
  location.assign(`/appliances/${encodeURIComponent(event.target.elements.serial.value)}`);
});

function say(lines) {
  said.replaceChildren(...lines.map((line) => Object.assign(document.createElement('p'), { textContent: line })));
}
