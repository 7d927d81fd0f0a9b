// The page of audits: sends a file that was chosen or dropped, or what was pasted, to the service's own route and follows the audit.
import { count, follow, left, show } from '/assets/progress.js';

const form = document.getElementById('upload');
const file = document.getElementById('file');
const going = document.getElementById('going');
const said = document.getElementById('said');
const cancel = document.getElementById('cancel');
const rate = document.getElementById('rate');

file.addEventListener('change', () => file.files.length && send(file.files[0], file.files[0].name));

form.addEventListener('submit', (event) => {
  event.preventDefault();
  const text = document.getElementById('pasted').value;
  if (text.trim()) send(new Blob([text]), '');
});

for (const name of ['dragover', 'drop', 'dragleave']) {
  document.addEventListener(name, (event) => {
    event.preventDefault();
    form.classList.toggle('over', name === 'dragover');
    const dropped = name === 'drop' && event.dataTransfer.files[0];
    if (dropped) send(dropped, dropped.name);
  });
}

async function send(given, name) {
  const [blob, type] = await read(given, name);
  const request = new XMLHttpRequest();
  const start = performance.now();
  going.hidden = false;
  say([]);
  rate.textContent = '';
  show('Sending', 0, blob.size);
  cancel.onclick = () => request.abort();
  request.upload.onprogress = ({ loaded, total }) => {
    const perSecond = loaded / ((performance.now() - start) / 1000);
    show(`Sending: ${megabytes(loaded)} of ${megabytes(total)} MB`, loaded, total);
    rate.textContent = `${megabytes(perSecond)} MB a second, ${left((total - loaded) / perSecond)}`;
  };
  request.onload = () => {
    const answer = JSON.parse(request.responseText);
    if (request.status === 202) {
      follow(answer.auditId, () => location.assign(`/audits/${answer.auditId}`));
    } else {
      stop([`${answer.title}. ${answer.detail ?? ''}`, ...(answer.errors ?? []).map((fault) => `${fault.pointer ?? fault.parameter}: ${fault.detail}`)]);
    }
  };
  request.onabort = () => stop(['Cancelled. Nothing was kept.']);
  request.onerror = () => stop(['The service does not answer.']);
  request.open('POST', '/v1/audits');
  request.setRequestHeader('Content-Type', type);
  if (name.endsWith('.gz')) request.setRequestHeader('Content-Encoding', 'gzip');
  request.send(blob);
}

// What it is, by the file's name, else by how its text begins. One record on many lines is sent as a list of one.
async function read(blob, name) {
  const plain = name.toLowerCase().replace(/\.gz$/, '');
  if (plain.endsWith('.csv')) return [blob, 'text/csv'];
  if (plain.endsWith('.ndjson') || plain.endsWith('.jsonl')) return [blob, 'application/x-ndjson'];
  const begin = (await blob.slice(0, 1000).text()).trimStart();
  if (begin.startsWith('[')) return [blob, 'application/json'];
  if (!begin.startsWith('{')) return [blob, plain.endsWith('.json') ? 'application/json' : 'text/csv'];
  return blob.size < 1e6 && isJson(await blob.text()) ? [new Blob(['[', blob, ']']), 'application/json'] : [blob, 'application/x-ndjson'];
}

function isJson(text) {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

function stop(lines) {
  going.hidden = true;
  file.value = '';
  say(lines);
}

function say(lines) {
  said.replaceChildren(...lines.map((line) => Object.assign(document.createElement('p'), { textContent: line })));
}

const megabytes = (bytes) => (bytes < 1e7 ? (bytes / 1e6).toFixed(1) : count(bytes / 1e6));
