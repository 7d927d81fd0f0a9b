import assert from 'node:assert/strict';
import { once } from 'node:events';
import { createServer } from 'node:http';
import { after, test } from 'node:test';
import { axe, close, open, plain, service, trespasses } from './watch.mjs';
import { dangerous, month, record } from './month.mjs';

const key = process.env.KEY;
const unsafe = record(1, (one) => {
  dangerous(one);
  one.premises.reference = 'INVENTED-PLACE';
});

after(close);

test('from signing in over a month of records to its printed report, and out again', async () => {
  const page = await open('/audits');
  assert.equal(plain(await page.locator('h1').textContent()), 'Sign in');
  await signIn(page, key);
  await page.waitForURL(/\/audits$/);
  await page.locator('#file').setInputFiles({ name: 'month.ndjson', mimeType: '', buffer: Buffer.from(`${JSON.stringify(unsafe)}\n${month(30)}`) });
  await page.locator('h1', { hasText: '31 records' }).waitFor();
  await page.getByRole('link', { name: 'Report to print' }).click();
  await page.waitForURL(/report$/);
  assert.match(plain(await page.locator('#dangers ~ .wide tr[data-line="1"]').textContent()), /^INVENTED-PLACE .* engineer 700001/);
  assert.ok((await page.pdf({ preferCSSPageSize: true })).length > 10_000);
  await page.goBack();
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.waitForURL(/sign-in$/);
  await page.goto('/audits');
  assert.match(page.url(), /sign-in\?to=%2Faudits$/);
});

test('a wrong key is refused on the page, which then takes the right one', async () => {
  const page = await open('/rules', { width: 360 });
  await signIn(page, '000000000000.wrong');
  await page.getByRole('alert').waitFor();
  await isSound(page);
  await signIn(page, key);
  await page.waitForURL(/\/rules$/);
  tolerate(401);
});

// The other origin is one of the same site, so that the browser sends the cookie along.
test('what another site has the browser send is refused on a page, and nobody is signed out', async () => {
  const page = await open('/rules');
  await signIn(page, key);
  await page.waitForURL(/\/rules$/);
  const other = createServer((request, response) => response.setHeader('Content-Type', 'text/html').end(
    `<form method="post" action="${service}${request.url}"><input name="key" value="${key}"><button>Win</button></form>`)).listen(0, '127.0.0.1');
  await once(other, 'listening');
  try {
    for (const form of ['/sign-in', '/sign-out']) {
      await page.goto(`http://127.0.0.1:${other.address().port}${form}`);
      await page.getByRole('button', { name: 'Win' }).click();
      await page.waitForURL(service + form);
      await page.locator('h1', { hasText: 'This form is not from here' }).waitFor();
      await isSound(page);
    }
  } finally {
    other.close();
  }
  await page.goto('/audits');
  assert.ok(await page.getByRole('button', { name: 'Sign out' }).isVisible());
  tolerate(400);
  trespasses.splice(0, trespasses.length, ...trespasses.filter((one) => !/ asks http:\/\/127\.0\.0\.1/.test(one) && !/favicon/.test(one)));
});

test('signing in, no page asked another host, threw, or met its policy', () => assert.deepEqual(trespasses, []));

async function signIn(page, shown) {
  await page.getByLabel('Key').fill(shown);
  await page.getByRole('button', { name: 'Sign in' }).click();
}

async function isSound(page) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
  assert.deepEqual(violations.map((one) => one.id), []);
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth));
}

function tolerate(status) {
  trespasses.splice(0, trespasses.length, ...trespasses.filter((one) => !one.includes(`status of ${status}`)));
}
