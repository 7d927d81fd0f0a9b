// Shows how far an audit is, from the state that its route gives, until it has ended.
const step = document.getElementById('step');
const bar = document.getElementById('bar');
const rate = document.getElementById('rate');

export async function follow(auditId, ended) {
  const address = `/v1/audits/${encodeURIComponent(auditId)}`;
  document.getElementById('cancel').onclick = () => fetch(address, { method: 'DELETE' });
  for (;;) {
    try {
      const audit = await (await fetch(address)).json();
      const { read, judged, rejected } = audit.records;
      show(`Judging: ${count(judged + rejected)} of ${count(read)} records`, judged + rejected, read);
      rate.textContent = audit.ratePerSecond ? `${count(audit.ratePerSecond)} records a second${audit.expectedEnd ? `, ${left((Date.parse(audit.expectedEnd) - Date.now()) / 1000)}` : ''}` : '';
      if (audit.state !== 'queued' && audit.state !== 'running') return ended(audit);
    } catch {
      rate.textContent = 'The service does not answer. Trying again …';
    }
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
}

export function show(words, done, all) {
  step.textContent = words;
  bar.max = all;
  bar.value = done;
}

export const count = (number) => Math.round(number).toLocaleString('en-GB').replaceAll(',', '\u202f');

export function left(seconds) {
  if (!(seconds >= 1)) return 'done in a moment';
  if (seconds < 90) return `done in about ${Math.round(seconds)} s`;
  return `done in about ${Math.round(seconds / 60)} min, at ${new Date(Date.now() + seconds * 1000).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })}`;
}
