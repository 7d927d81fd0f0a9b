import assert from 'node:assert/strict';
import { writeFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { axe, close, json, open, plain, trespasses } from './watch.mjs';
import { dangerous, month, record } from './month.mjs';

const hostile = '<script>alert(1)</script><img src=x onerror="alert(2)">\'"&amp;';
const send = (one) => json('/v1/evaluations', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(one) });
let audit, unsafe, everyPage;

before(async () => {
  unsafe = await send(record(1, (one) => {
    dangerous(one);
    one.appliance.model = hostile;
    one.premises.reference = hostile;
    delete one.water;
  }));
  const { auditId } = await json('/v1/audits', { method: 'POST', headers: { 'Content-Type': 'application/x-ndjson' }, body: month(200) });
  do audit = await json(`/v1/audits/${auditId}`);
  while (!audit.summary);
  everyPage = ['/', '/audits', `/audits/${auditId}`, `/audits/${auditId}?outcome=rejected`, `/audits/${auditId}/records/4`, `/audits/${auditId}/records/34`,
    `/evaluations/${unsafe.evaluationId}`, '/rules', '/rules?words=ratio', '/rules/combustion-ratio', '/rules/no-such-rule', '/limits', '/appliances/SERIAL-1', `/v1/audits/${auditId}/report`];
});

after(close);

test('a file of 5,000 records is sent, its progress moves, and its audit is shown', async () => {
  await writeFile('month.ndjson', month(5000));
  const page = await open('/audits');
  await page.locator('#file').setInputFiles('month.ndjson');
  const seen = new Set();
  const words = new Set();
  while (!/\/audits\/./.test(page.url())) {
    const [value, step, rate] = await page.evaluate(() => ['bar', 'step', 'rate'].map((id) => document.getElementById(id)).map((one) => one?.value ?? one?.textContent)).catch(() => []);
    if (step?.startsWith('Judging')) seen.add(value);
    words.add(`${step?.split(':')[0]} ${/a second, done in/.test(rate)}`);
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
  assert.ok(seen.size > 3, `the bar was seen at ${[...seen]}`);
  assert.deepEqual([...seen], [...seen].sort((a, b) => a - b), 'the bar never goes back');
  assert.ok(words.has('Judging true'), `rate and expected end are told: ${[...words]}`);
  await page.locator('h1', { hasText: '5\u202f000 records' }).waitFor();
  const { summary } = await json(`/v1${new URL(page.url()).pathname}`);
  const counts = (await page.locator('.tallies .count').allTextContents()).map((text) => Number(text.replace(/\D/g, '')));
  assert.deepEqual(counts, [...['unsafe', 'incomplete', 'advisory', 'pass'].map((name) => summary.outcomes[name]), summary.records.rejected]);
  assert.equal(counts.reduce((a, b) => a + b), 5000);
});

test('a dropped file and pasted records are taken', async () => {
  for (const [give, records] of [
    [(page, text) => page.evaluate((ndjson) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([ndjson], 'dropped.ndjson'));
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    }, text), 12],
    [async (page, text) => {
      await page.locator('summary', { hasText: 'paste' }).click();
      await page.locator('#pasted').fill(text);
      await page.locator('button', { hasText: 'pasted' }).click();
    }, 7],
  ]) {
    const page = await open('/audits');
    await give(page, month(records));
    await page.locator('h1', { hasText: `${records} records` }).waitFor();
  }
});

test('an audit is cancelled from the page', async () => {
  const page = await open('/audits');
  await page.locator('#file').setInputFiles({ name: 'month.ndjson', mimeType: '', buffer: Buffer.from(month(4000)) });
  await page.locator('#step', { hasText: 'Judging' }).waitFor();
  await page.locator('#cancel').click();
  await page.locator('main', { hasText: 'Cancelled:' }).waitFor();
  assert.equal((await json(`/v1${new URL(page.url()).pathname}`)).state, 'cancelled');
});

test('what cannot be sent is told, and nothing is kept', async () => {
  const page = await open('/audits');
  await page.locator('#file').setInputFiles({ name: 'empty.ndjson', mimeType: '', buffer: Buffer.from('\n') });
  await page.locator('#said', { hasText: 'no record' }).waitFor();
  trespasses.splice(0, trespasses.length, ...trespasses.filter((one) => !/status of 422/.test(one)));
});

test('filters stand in the address, and show what the JSON shows', async () => {
  const page = await open(`/audits/${audit.auditId}`);
  await page.locator('#outcome').selectOption('missing');
  await page.locator('#engineer').fill('700002');
  await page.locator('.filters button').click();
  await page.waitForURL(/engineer=700002/);
  assert.deepEqual(Object.fromEntries(new URL(page.url()).searchParams), { outcome: 'missing', engineer: '700002' });
  await hasRowsOf(page, 'outcome=missing&engineer=700002');
});

test('pages of findings follow one another without a gap', async () => {
  const page = await open(`/audits/${audit.auditId}?outcome=missing&topic=water`);
  const { items } = await json(`/v1/audits/${audit.auditId}/findings?sort=outcome&outcome=missing&topic=water&limit=500`);
  assert.ok(items.length > 50, 'more than one page');
  const shown = await rows(page);
  await page.locator('a[rel=next]').click();
  await page.waitForURL(/next=/);
  assert.deepEqual([...shown, ...(await rows(page))], items.slice(0, 100).map((row) => [String(row.line), row.ruleId, row.subject, row.outcome]));
});

test('from an audit to one finding, which is what the address points to', async () => {
  const page = await open(`/audits/${audit.auditId}?outcome=unsafe`);
  const link = page.locator('.found a').first();
  const message = plain(await link.textContent());
  await link.click();
  await page.waitForURL(/records/);
  const pointed = page.locator('.finding:target');
  assert.equal(plain(await pointed.locator('.message').textContent()), message);
  assert.ok(await pointed.isVisible());
});

test('an evaluation says what its JSON says', async () => {
  const page = await open(`/evaluations/${unsafe.evaluationId}`);
  const said = await json(`/v1/evaluations/${unsafe.evaluationId}?include=all`);
  const text = plain(await page.locator('main').textContent());
  const found = await page.locator('[data-outcome]').evaluateAll((all) => all.map(({ dataset }) => [dataset.rule, dataset.subject, dataset.outcome]));
  assert.deepEqual(found.sort(), said.findings.map((one) => [one.ruleId, one.subject, one.outcome]).sort());
  const figures = await page.locator('[data-figure]').evaluateAll((all) => all.map((one) => [one.dataset.figure, one.dataset.subject, one.querySelector('time')?.dateTime ?? Number(one.querySelector('data').value)]));
  assert.deepEqual(figures.sort(), said.figures.map((one) => [one.name, one.subject, one.date ?? one.value]).sort());
  const pointersUnder = (heading) => page.locator(`section[aria-labelledby=${heading}] [data-pointer]`).evaluateAll((all) => all.map((one) => one.dataset.pointer));
  assert.deepEqual(await pointersUnder('asked'), [...said.missing].sort((a, b) => b.whileOnSite - a.whileOnSite).map((one) => one.pointer));
  assert.deepEqual(await pointersUnder('unseen'), said.notLookedAt.map((one) => one.pointer));
  assert.ok(said.notLookedAt.length > 0, 'the record leaves something out that closing does not wait for');
  for (const words of [said.recordId, said.inputHash, said.resultHash, said.ruleSet.lawHash, said.ruleSet.codeHash, ...said.cautions, ...said.missing.map((one) => one.ask),
    ...said.findings.flatMap((one) => [one.caution, one.remedy, one.outcome === 'notApplicable' ? null : one.message, one.limit?.source])]) {
    if (words) assert.ok(text.toLowerCase().includes(plain(words).toLowerCase()), `the page lacks: ${words}`);
  }
  const heading = plain(await page.locator('h1').textContent());
  assert.match(heading, /^Unsafe\. /);
  assert.doesNotMatch(text, /(?<!say that (a|the) boiler )\bis safe\b/);
  const headings = await page.locator('h2').allTextContents();
  assert.equal(plain(headings[0]), 'Act on this');
});

test('a rule says what its JSON says', async () => {
  const rule = await json('/v1/rules/combustion-ratio');
  const text = plain(await (await open('/rules/combustion-ratio')).locator('main').textContent());
  for (const words of [rule.title, rule.id, rule.coverageWhy, ...rule.references.map((one) => one.title), ...rule.limits.map((one) => one.source), ...rule.cases.map((one) => one.name)])
    assert.ok(text.toLowerCase().includes(plain(words).toLowerCase()), `the page lacks: ${words}`);
  const { items } = await json('/v1/rules?limit=500');
  const listed = await (await open('/rules')).locator('[data-rule]').evaluateAll((all) => all.map((one) => one.dataset.rule));
  assert.deepEqual(listed.sort(), items.map((one) => one.id).sort());
});

test('a record is checked from the start page, and its faults are told there', async () => {
  const page = await open('/');
  const text = await page.locator('#record').inputValue();
  await page.locator('#record').fill(text.replaceAll('"naturalGas"', '"coal"'));
  await page.locator('#check button').click();
  await page.locator('#said', { hasText: '#/appliance/fuel' }).waitFor();
  trespasses.splice(0, trespasses.length, ...trespasses.filter((one) => !/status of 422/.test(one)));
  await page.locator('#record').fill(text);
  await page.locator('#check button').click();
  await page.waitForURL(/evaluations/);
  assert.match(plain(await page.locator('h1').textContent()), /^Pass\. The record shows/);
});

test('an appliance shows every record of it, and leads to each', async () => {
  const page = await open('/appliances/SERIAL-1');
  const links = page.locator('.found a');
  assert.ok((await links.count()) >= 2, 'the evaluation, and the line of the audit');
  await page.locator(`a[href="/evaluations/${unsafe.evaluationId}"]`).click();
  await page.waitForURL(/evaluations/);
});

test('hostile words of a record stay words', async () => {
  const page = await open(`/evaluations/${unsafe.evaluationId}`);
  assert.ok((await page.locator('main').textContent()).includes(hostile));
  assert.equal(await page.locator('main img, main script').count(), 0);
});

test('the keyboard alone leads from the start to one finding', async () => {
  const page = await open('/');
  await page.keyboard.press('Tab');
  assert.equal(await focused(page), 'Skip to the content');
  await tabTo(page, 'Audits');
  await page.keyboard.press('Enter');
  await page.waitForURL(/audits$/);
  await page.goto(`/audits/${audit.auditId}`);
  await tabTo(page, 'Outcome');
  await page.keyboard.type('Uns');
  await tabTo(page, 'Show');
  await page.keyboard.press('Enter');
  await page.waitForURL(/outcome=unsafe/);
  await tabTo(page, plain(await page.locator('.found a').first().textContent()));
  await page.keyboard.press('Enter');
  await page.waitForURL(/records/);
  assert.equal(await page.locator('.finding:target').count(), 1);
});

test('axe finds nothing on any page, light and dark, wide and narrow', async () => {
  const faults = [];
  for (const path of everyPage) {
    for (const look of [{ colorScheme: 'light' }, { colorScheme: 'dark' }, { width: 360 }]) {
      const page = await open(path, look);
      await page.evaluate(() => document.querySelectorAll('details').forEach((one) => (one.open = true)));
      await page.evaluate(axe);
      const { violations } = await page.evaluate(() => globalThis.axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
      faults.push(...violations.map((one) => `${path} ${JSON.stringify(look)} ${one.id}: ${one.nodes.slice(0, 3).map((node) => node.html).join(' ')}`));
      await page.context().close();
    }
  }
  trespasses.splice(0, trespasses.length, ...trespasses.filter((one) => !/status of 404/.test(one)));
  assert.deepEqual(faults, []);
});

test('every page fits a screen of 360 pixels', async () => {
  for (const path of everyPage) {
    const page = await open(path, { width: 360 });
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth) <= 360, path);
    await page.context().close();
  }
  trespasses.splice(0, trespasses.length, ...trespasses.filter((one) => !/status of 404/.test(one)));
});

test('on paper what was closed is open, and the report is A4', async () => {
  const page = await open(`/evaluations/${unsafe.evaluationId}`);
  const working = page.locator('.figures details p').first();
  assert.ok(!(await working.isVisible()));
  await page.emulateMedia({ media: 'print' });
  assert.ok(await working.isVisible());
  assert.ok(!(await page.locator('nav').isVisible()));
  const report = await open(`/v1/audits/${audit.auditId}/report`);
  const pdf = (await report.pdf({ preferCSSPageSize: true })).toString('latin1');
  const [, wide, high] = pdf.match(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/).map(Number);
  assert.deepEqual([Math.round(wide), Math.round(high)], [595, 842]);
});

test('no page asked another host, threw, or met its policy', () => assert.deepEqual(trespasses, []));

async function hasRowsOf(page, query) {
  const { items } = await json(`/v1/audits/${audit.auditId}/findings?sort=outcome&limit=50&${query}`);
  assert.ok(items.length > 0);
  assert.deepEqual(await rows(page), items.map((row) => [String(row.line), row.ruleId, row.subject, row.outcome]));
}

const rows = (page) => page.locator('.found li').evaluateAll((all) => all.map(({ dataset }) => [dataset.line, dataset.rule, dataset.subject, dataset.outcome]));

const focused = (page) => page.evaluate(() => {
  const { activeElement: one } = document;
  return (one.labels?.[0]?.textContent ?? one.textContent).replace(/\s+/g, ' ').trim();
});

async function tabTo(page, name) {
  for (let step = 0; step < 400; step++) {
    await page.keyboard.press('Tab');
    if ((await focused(page)) === name) {
      assert.notEqual(await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle), 'none', `${name}: the focus is seen`);
      return;
    }
  }
  assert.fail(`the keyboard does not reach ${name}`);
}
