// A newer version: it waits, says so, and loses nothing of what is being made; tabs of the former one go on working.
import type { Page } from 'playwright-core';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { drawn, drawnAnew, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { pagesIn, pdfOf } from './files.ts';
import { addChild, codeField, codeOfElsewhere, writeCode } from './record-parts.ts';
import {
  anotherTab,
  changeOver,
  line,
  newSite,
  storedVersions,
  untilStored,
  versionOf,
} from './versions.ts';

const site = newSite();
// Such hooks run the last one first: the folder goes when its server has gone.
afterAll(site.remove);
const app = startApp({ build: () => site.folder });
beforeEach(site.publishFirst);

async function openFirst(recipe: string, options = {}): Promise<Page> {
  const page = await app.blank({ serviceWorkers: 'allow', ...options });
  await page.goto(`${app.address()}#${recipe}`);
  await untilStored(page);
  return page;
}

/** Puts the later version up, and has the browser look for it as it does when a page is loaded. */
async function publish(page: Page): Promise<void> {
  await site.publishLater();
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });
  await line(page).waitFor();
}

async function keptInSession(page: Page): Promise<number> {
  return page.evaluate(() => sessionStorage.length);
}

describe('what is being made', () => {
  test('a newer version says that it is ready, and nothing happens until the button is pressed', async () => {
    const page = await openFirst('seed=7');
    await drawn(page);
    const before = await versionOf(page);
    let loads = 0;
    page.on('load', () => {
      loads += 1;
    });
    await publish(page);
    await page.getByRole('button', { name: 'One notch harder' }).click();
    expect(loads).toBe(0);
    expect(await versionOf(page)).toBe(before);
    expect(await faultsOf(page)).toEqual([]);
  });

  test('the recipe, the sheet in view and the group are there after the change-over', async () => {
    const page = await openFirst('activity=by-key&step=2&sheets=3&seed=7');
    const first = await drawn(page);
    await page.getByRole('button', { name: 'Next sheet' }).click();
    const second = await drawnAnew(page, first);
    await page.getByRole('button', { name: 'For a group' }).click();
    await page.getByRole('textbox', { name: 'Names, one a line' }).fill('Fern\nOtto');
    const fernsSecond = await drawnAnew(page, second);
    await page.getByRole('radio', { name: 'all of one kind together' }).click();
    await publish(page);
    const address = page.url();
    await changeOver(page);
    expect(page.url()).toBe(address);
    expect(await drawn(page)).toBe(fernsSecond);
    const names = page.getByRole('textbox', { name: 'Names, one a line' });
    expect(await names.inputValue()).toBe('Fern\nOtto');
    await page.getByRole('radio', { name: /all of one kind together/, checked: true }).waitFor();
    await page.getByText('Sheets for telling same from different').waitFor();
    expect(await keptInSession(page)).toBe(0);
  });

  test('a record half written, a child half entered and the recipe left behind are there after it', async () => {
    const page = await openFirst('activity=by-key&step=2&sheets=3&seed=7');
    const sheet = await drawn(page);
    await page.getByRole('link', { name: 'Record' }).click();
    await addChild(page, 'Fern');
    await writeCode(page, codeOfElsewhere());
    await page.getByRole('radio', { name: 'All with help', exact: true }).click();
    await page.getByRole('button', { name: 'More to note' }).click();
    await page.getByRole('textbox', { name: 'Note' }).fill('held the pen well');
    await page.getByRole('button', { name: 'Add a child' }).click();
    await page.getByRole('textbox', { name: 'Nickname' }).fill('Ot');
    await publish(page);
    await changeOver(page);
    expect(await page.getByRole('textbox', { name: 'Nickname' }).inputValue()).toBe('Ot');
    expect(await codeField(page).inputValue()).toBe(codeOfElsewhere());
    const note = page.getByRole('textbox', { name: 'Note' });
    await note.waitFor();
    expect(await note.inputValue()).toBe('held the pen well');
    await page.getByRole('button', { name: 'Save the record' }).click();
    await page.getByText(/^Saved for Fern, .*: 3 right with help/).waitFor();
    // What was saved or called off is not there again when one comes back.
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByRole('link', { name: 'Make' }).click();
    expect(await drawn(page)).toBe(sheet);
    await page.getByRole('link', { name: 'Record' }).click();
    await page.getByRole('button', { name: 'Add a child' }).click();
    expect(await page.getByRole('textbox', { name: 'Nickname' }).inputValue()).toBe('');
    expect(await codeField(page).inputValue()).toBe('');
  });

  test('a count half written in Supplies is there after it', async () => {
    const page = await openFirst('supplies');
    await page.getByRole('button', { name: 'Add stickers' }).click();
    await page.getByLabel('How many').fill('3');
    await publish(page);
    await changeOver(page);
    await page.getByLabel('How many').waitFor();
    expect(await page.getByLabel('How many').inputValue()).toBe('3');
    // Left without saving, it is given up as ever.
    await page.getByRole('link', { name: 'Record' }).click();
    await page.getByRole('button', { name: 'Add a child' }).waitFor();
    await page.getByRole('link', { name: 'Supplies' }).click();
    await page.getByText('Nothing is counted yet.').waitFor();
    expect(await page.getByLabel('How many').count()).toBe(0);
  });

  test('a PDF that is being written is finished before it', async () => {
    const page = await openFirst('sheets=300&seed=7');
    await drawn(page);
    await publish(page);
    const before = await versionOf(page);
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Get the PDF' }).click();
    await page.getByRole('progressbar').waitFor();
    await page.getByRole('button', { name: 'Change over' }).click();
    await page.getByText(/^Changing over once all is written/).waitFor();
    expect(await versionOf(page)).toBe(before);
    await saving;
    await expect.poll(() => versionOf(page).catch(() => before)).not.toBe(before);
  });
});

describe('two tabs', () => {
  test('a tab of the former version goes on working, and its files go once no tab needs them', async () => {
    const page = await openFirst('seed=7');
    const other = await anotherTab(page, `${app.address()}#seed=8`);
    const sheet = await drawn(other);
    const former = await versionOf(other);
    await publish(page);
    await line(other).waitFor();
    await changeOver(page);
    const later = await versionOf(page);
    // What is used here was not loaded yet; it is gone from the server, and from where the browser keeps what it fetched.
    await (await other.context().newCDPSession(other)).send('Network.clearBrowserCache');
    expect(await versionOf(other)).toBe(former);
    expect(pagesIn((await pdfOf(other)).bytes)).toBeGreaterThan(11);
    await other.getByRole('link', { name: 'Record' }).click();
    await addChild(other, 'Fern');
    await other.getByRole('link', { name: 'Growth' }).click();
    await other.locator('main.growth').waitFor();
    await other.goBack();
    await other.goBack();
    expect([...(await storedVersions(page))].sort()).toEqual([former, later].sort());
    await changeOver(other);
    expect(await versionOf(other)).toBe(later);
    expect(await drawn(other)).toBe(sheet);
    await expect.poll(() => storedVersions(page)).toEqual([later]);
  });

  test('with no tab open the newer version is simply there the next time', async () => {
    const page = await openFirst('seed=7');
    const former = await versionOf(page);
    await publish(page);
    const context = page.context();
    await page.close();
    const next = await context.newPage();
    await expect
      .poll(async () => {
        await next.goto('about:blank');
        await next.goto(app.address());
        return versionOf(next);
      })
      .not.toBe(former);
    await drawn(next);
    expect(await line(next).count()).toBe(0);
  });

  test('a version that cannot be stored whole leaves the former one in force', async () => {
    const page = await openFirst('seed=7');
    const former = await versionOf(page);
    await site.publishLater({ isCutOff: true });
    const came = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
      const worker = registration.installing;
      return new Promise<string | undefined>((resolve) => {
        worker?.addEventListener('statechange', () => resolve(worker.state));
      });
    });
    expect(came).toBe('redundant');
    await page.reload();
    await drawn(page);
    expect(await versionOf(page)).toBe(former);
    expect(await line(page).count()).toBe(0);
  });
});

test('the line moves nothing, neither on a desktop nor on a phone', async () => {
  for (const options of [{}, { viewport: PHONE }]) {
    site.publishFirst();
    const page = await openFirst('seed=7', options);
    await drawn(page);
    const top = () => page.locator('main').evaluate((main) => main.getBoundingClientRect().top);
    const before = await top();
    await publish(page);
    expect(Math.abs((await top()) - before)).toBeLessThanOrEqual(1);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
  }
});
