import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { shelfCandidates } from './candidates';
import { complaintsOf } from './person';

const PAGES = [
  '/',
  '/find',
  '/find?q=nothing%20like%20it',
  '/find?q=syrup',
  `/find?q=${'x'.repeat(200)}`,
  '/sets',
  '/sets/OR-115',
  '/sets/OR-115/candidates',
  '/sets/OR-1155',
  '/stores',
  '/frames',
  '/frames/184TC',
  '/frames/182%2F4T',
  '/frames/FF165',
  '/frames/no-frame',
  '/frames/measure?shaftHeightMm=113&holesAcrossMm=190&shaftDiameterMm=28&face=none',
  '/frames/measure?shaftHeightMm=wide',
  '/motors/no-plate',
  '/motors/no-plate?step=feet&shaftHeightMm=wide',
  '/motors/no-plate?step=face&shaftHeightMm=132',
  '/motors/no-plate?step=speed&rpm=1450&hertz=50&shaftHeightMm=wide',
  '/motors/no-plate?step=found&shaftHeightMm=132&holesAcrossMm=216&holesAlongMm=140&rpm=1450&hertz=50&leads=6&volts=400&amps=9',
  '/motors/M-0145',
  '/motors/none',
  '/swaps/none',
  '/sets/OR-115/failed',
  '/faults?days=3650',
  '/faults/none',
  '/repairs',
  '/motors/M-0511',
  '/doubts',
  '/doubts?rule=speed',
  '/person',
  '/site',
  '/api-docs',
  '/nowhere',
];

for (const theme of ['day', 'night'] as const)
  test(`every page is accessible and as wide as the screen, ${theme} sheet`, async ({
    page,
    context,
    baseURL,
  }, info) => {
    test.setTimeout(400_000);
    await context.addCookies([{ name: 'theme', value: theme, url: baseURL ?? '' }]);
    const complaints = complaintsOf(page);
    const [best] = await shelfCandidates(page, 'OR-115');
    await page.goto('/sets/OR-115/candidates?from=buy');
    const rating = await page.locator('.cand').first().getByRole('link').getAttribute('href');
    const judged = [`/sets/OR-115/job/${best}`, `/sets/OR-115/candidates/${best}`, `/sets/OR-115/swap/${best}`];
    const bought = rating === null ? [] : [rating, rating.replace('/candidates/', '/buy/')];
    expect(bought, 'a standard rating answers this set').toHaveLength(2);
    for (const path of [...PAGES, ...judged, ...bought]) {
      await page.goto(path);
      await expect(page.getByRole('heading', { level: 1 }), path).toHaveCount(1);
      expect(await page.title(), path).toMatch(/Bedplate/);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(over, `${path} is wider than the screen`).toBeLessThanOrEqual(0);
      // What it looks at hardly differs at a desk, and it is slow.
      if (info.project.name === 'phone')
        expect((await new AxeBuilder({ page }).analyze()).violations, path).toEqual([]);
    }
    expect(complaints).toEqual([]);
  });

test('what is pressed is at least 44 px, and the skip link comes first', async ({ page }) => {
  for (const path of [
    '/',
    '/sets/OR-115',
    '/sets/OR-115/failed',
    '/faults',
    '/sets/OR-115/candidates',
    '/frames/184TC',
    '/stores',
  ]) {
    await page.goto(path);
    const small = await page
      .locator('a, button, summary, input:not([type=hidden]), select, textarea')
      .evaluateAll((all) =>
        all
          .filter((one) => {
            // A link that fills its row, or a box inside its label, is as large as these.
            const target = one.closest('li:has(.line-name), li:has(.cand), .tick') ?? one;
            const { width, height } = target.getBoundingClientRect();
            return width > 0 && (width < 44 || height < 44);
          })
          .map((one) => one.outerHTML.slice(0, 120)),
      );
    expect(small, path).toEqual([]);
  }
  await page.goto('/');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'To the content' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('#content')).toBeFocused();
});

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
