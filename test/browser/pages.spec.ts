import { expect, test } from '@playwright/test';
import { shelfCandidates } from './candidates';

test('a tag that is not there is answered 404 with the nearest, readable without script', async ({ browser }) => {
  const page = await browser.newPage({ javaScriptEnabled: false, storageState: 'test-results/technician.json' });
  const answer = await page.goto('/sets/OR-1115');
  expect(answer?.status()).toBe(404);
  await page.getByRole('link', { name: 'OR-115', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'OR-115' })).toBeVisible();
  await page.close();
});

test('hostile text is shown as text and breaks nothing', async ({ page }) => {
  let wasRun = false;
  page.on('dialog', async (dialog) => {
    wasRun = true;
    await dialog.dismiss();
  });
  const hostile = '"><img src=x onerror=alert(1)>\u202e%_\\';
  for (const path of [`/find?q=${encodeURIComponent(hostile)}`, `/sets/${encodeURIComponent(hostile)}`]) {
    await page.goto(path);
    await expect(page.getByText('onerror=alert(1)').first()).toBeVisible();
  }
  for (const tag of ['%25', '%5C', '_____', '%00', '%E2%80%AE', '..%2F..%2Fetc']) {
    const answer = await page.goto(`/sets/${tag}`);
    expect(answer?.status(), tag).toBe(404);
  }
  await page.goto('/sets/OR-115/failed');
  await page.getByText('Several, in words, or with a photograph').click();
  await page.getByLabel('What is wrong?').fill('<script>alert(1)</script> & "smoke"\nsecond line');
  await page.getByRole('button', { name: 'Report, and see what can go in' }).click();
  await expect(page.getByText('<script>alert(1)</script> & "smoke"').first()).toBeVisible();
  expect(wasRun).toBe(false);
});

test('a page prints with its title block at the foot and nothing to press', async ({ page }) => {
  const [best] = await shelfCandidates(page, 'OR-115');
  await page.goto(`/sets/OR-115/candidates/${best}`);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('link', { name: 'Record the swap' })).toBeHidden();
  await expect(page.getByText('Checked by')).toBeVisible();
});

test('without a session every page leads to the sign-in and back', async ({ browser }) => {
  const page = await browser.newPage({ storageState: { cookies: [], origins: [] } });
  for (const path of [
    '/',
    '/sets/OR-115',
    '/stores',
    '/frames/184TC',
    '/motors/M-0145',
    '/swaps/none',
    '/person',
    '/site',
    '/people',
    '/people/nobody',
    '/tokens',
  ]) {
    await page.goto(path);
    await expect(page, path).toHaveURL(/\/sign-in/);
  }
  await page.close();
});

test('another site cannot make a signed-in browser change anything', async ({ page, baseURL }) => {
  await page.goto('/');
  const other = baseURL?.replace('localhost', '127.0.0.1') ?? '';
  await page.route(`${other}/elsewhere`, (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: `<form method="post" action="${baseURL}/theme"><button name="theme" value="night">Go</button></form>`,
    }),
  );
  await page.goto(`${other}/elsewhere`);
  const answer = page.waitForResponse(`${baseURL}/theme`);
  await page.getByRole('button', { name: 'Go' }).click();
  expect((await answer).status()).toBe(403);
});
