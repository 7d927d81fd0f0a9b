// A browser whose every page is watched: what it asks of other hosts, and what its policy refuses.
import { readFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';

export const service = process.env.SERVICE.replace(/\/$/, '');
export const trespasses = [];

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox'] });

export const close = () => browser.close();

export async function open(path, { width = 1280, colorScheme = 'light' } = {}) {
  const context = await browser.newContext({ baseURL: service, viewport: { width, height: 900 }, colorScheme, acceptDownloads: true });
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${service}/`) && !/^(data|blob):/.test(url)) trespasses.push(`${path} asks ${url}`);
  });
  const page = await context.newPage();
  page.on('console', (message) => message.type() === 'error' && trespasses.push(`${path}: ${message.text()}`));
  page.on('pageerror', (error) => trespasses.push(`${path}: ${error.message}`));
  page.on('dialog', (dialog) => trespasses.push(`${path}: dialog ${dialog.message()}`) && dialog.dismiss());
  await page.goto(path);
  return page;
}

export async function json(path, init) {
  const answer = await fetch(service + path, init);
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  return answer.json();
}

// The whole text of an element on one line, blanks of every kind as one.
export const plain = (text) => text.replace(/\s+/g, ' ').trim();

export const axe = await readFile(new URL('node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
