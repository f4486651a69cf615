import AxeBuilder from '@axe-core/playwright';
import { type Browser, expect, type Page, test } from '@playwright/test';
import { complaintsOf, stateOf } from './person';

const PASSWORD = 'weir-and-kettle-hob';
test.use({ storageState: stateOf('administrator') });

const nobody = (browser: Browser, more = {}) =>
  browser.newContext({ storageState: { cookies: [], origins: [] }, ...more });

/** Makes the link for somebody new, and tells it. */
async function invite(page: Page, name: string, email: string): Promise<string> {
  await page.goto('/people');
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('E-mail').fill(email);
  const answer = page.waitForResponse((response) => response.request().method() === 'POST');
  await page.getByRole('button', { name: 'Make the link' }).click();
  const link = String(await page.getByLabel('Shown this once').textContent());
  expect((await answer).headers()['cache-control']).toContain('no-store');
  expect(link).toMatch(/\/join\/[\w-]{43}$/);
  return link;
}

async function signInAs(page: Page, email: string): Promise<void> {
  await page.goto('/sign-in');
  await page.getByLabel('E-mail').fill(email);
  await page.getByLabel('Password').fill(PASSWORD);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page).toHaveURL((url) => url.pathname === '/');
}

test('S21 somebody invited comes in without script, gets another role, and is retired', async ({ page, browser }) => {
  const email = `bo-${crypto.randomUUID()}@example.com`;
  const link = await invite(page, 'Bo Harrow', email);
  const context = await nobody(browser, { javaScriptEnabled: false });
  const theirs = await context.newPage();
  for (const _look of [1, 2]) {
    const answer = await theirs.goto(link);
    expect([answer?.status(), answer?.headers()['referrer-policy']]).toEqual([200, 'no-referrer']);
    expect(answer?.headers()['cache-control']).toContain('no-store');
  }
  await theirs.getByLabel('New password').fill('short');
  await theirs.getByRole('button', { name: 'Set the password' }).click();
  await expect(theirs.getByRole('alert').filter({ hasText: 'at least 12 characters' })).toBeVisible();
  await expect(theirs.getByLabel('New password')).toHaveValue('');
  await theirs.getByLabel('New password').fill(PASSWORD);
  await theirs.getByRole('button', { name: 'Set the password' }).click();
  await expect(theirs).toHaveURL(/\/sign-in\?told=password$/);
  expect((await theirs.goto(link))?.status()).toBe(404);
  await signInAs(theirs, email);
  await expect(theirs.getByRole('heading', { level: 1 })).toBeVisible();

  await page.goto('/people');
  await page.getByRole('listitem').filter({ hasText: email }).getByRole('link').click();
  await expect(page.getByRole('heading', { level: 1, name: 'Bo Harrow' })).toBeVisible();
  await page.getByLabel('Role').selectOption('planner');
  await page.getByRole('button', { name: 'Change the role' }).click();
  await expect(page.getByText('Signed in nowhere.')).toBeVisible();
  await theirs.goto('/person');
  await expect(theirs).toHaveURL(/\/sign-in/);

  await page.getByRole('button', { name: 'Retire' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'nothing was done' })).toBeVisible();
  await page.getByText('The person may no longer come in').click();
  await page.getByRole('button', { name: 'Retire' }).click();
  await expect(page.getByRole('button', { name: 'Bring back' })).toBeVisible();
  await page.getByText('The name may go for good').click();
  await page.getByRole('button', { name: 'Take the name away' }).click();
  await expect(page.getByRole('heading', { level: 1, name: /^A person \(\d+\)$/ })).toBeVisible();
  await expect(page.getByText(email)).toHaveCount(0);
  await context.close();
});

test('S22 S23 a person ends their other session, changes the password, and keeps this one', async ({
  page,
  browser,
}) => {
  const email = `ida-${crypto.randomUUID()}@example.com`;
  const link = await invite(page, 'Ida Fenn', email);
  const [here, there] = [await nobody(browser), await nobody(browser)];
  const [one, two] = [await here.newPage(), await there.newPage()];
  await one.goto(link);
  await one.getByLabel('New password').fill(PASSWORD);
  await one.getByRole('button', { name: 'Set the password' }).click();
  await expect(one).toHaveURL(/told=password/);
  await signInAs(one, email);
  await signInAs(two, email);
  const complaints = complaintsOf(one);
  await one.goto('/person');
  await one.getByRole('button', { name: 'End', exact: true }).click();
  await expect(one.getByRole('button', { name: 'End', exact: true })).toHaveCount(0);
  await two.goto('/person');
  await expect(two).toHaveURL(/\/sign-in/);
  await one.getByLabel('Old password').fill('not-the-old-one');
  await one.getByLabel('New password').fill('another-kettle-and-weir');
  await one.getByRole('button', { name: 'Change the password' }).click();
  await expect(one.getByRole('alert').filter({ hasText: 'is not your password' })).toBeVisible();
  await one.getByLabel('Old password').fill(PASSWORD);
  await one.getByLabel('New password').fill('another-kettle-and-weir');
  await one.getByRole('button', { name: 'Change the password' }).click();
  await expect(one.getByText('Your password is changed.')).toBeVisible();
  await one.getByLabel('Figures are shown in').selectOption('us');
  await one.getByRole('button', { name: 'Save the units' }).click();
  await expect(one.getByText('Saved.')).toBeVisible();
  await one.reload();
  await expect(one.getByLabel('Figures are shown in')).toHaveValue('us');
  expect(complaints).toEqual([]);
  await here.close();
  await there.close();
});

test('S13 a token is made, asks, and is revoked', async ({ page, request, baseURL }) => {
  const name = `Historian ${crypto.randomUUID().slice(0, 8)}`;
  await page.goto('/tokens');
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Good for').fill('400');
  await page.getByRole('button', { name: 'Make the token' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'from 1 to 365' })).toBeVisible();
  await expect(page.getByLabel('Name')).toHaveValue(name);
  await page.getByLabel('Good for').fill('30');
  const answer = page.waitForResponse((response) => response.request().method() === 'POST');
  await page.getByRole('button', { name: 'Make the token' }).click();
  const secret = String(await page.getByLabel('Shown this once').textContent());
  expect((await answer).headers()['cache-control']).toContain('no-store');
  const ask = () => request.get(`${baseURL}/api/v1/frames/184TC`, { headers: { authorization: `Bearer ${secret}` } });
  expect((await ask()).status()).toBe(200);
  await page.goto('/tokens');
  await page.getByRole('link', { name: 'What it can ask' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'API' })).toBeVisible();
  await page.getByRole('link', { name: 'NewSet' }).first().click();
  await expect(page.locator('#schema-NewSet')).toBeVisible();
  await page.goto('/tokens');
  await expect(page.getByText(secret)).toHaveCount(0);
  await page.getByRole('listitem').filter({ hasText: name }).getByRole('button', { name: 'Revoke' }).click();
  await expect(page.getByRole('listitem').filter({ hasText: name })).toContainText('revoked');
  expect((await ask()).status()).toBe(401);
});

test('these pages are accessible and as wide as the screen; only an administrator sees them', async ({
  page,
  browser,
}) => {
  const email = `eve-${crypto.randomUUID()}@example.com`;
  const link = await invite(page, 'Eve Sluice', email);
  await page.setViewportSize({ width: 360, height: 740 });
  const [first] = await page
    .getByRole('listitem')
    .getByRole('link')
    .evaluateAll((all) => all.map((one) => one.getAttribute('href')).filter((href) => href?.startsWith('/people/')));
  for (const path of ['/people', String(first), '/people/nobody', '/tokens', link, '/reset/none']) {
    await page.goto(path);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(over, path).toBeLessThanOrEqual(0);
    expect((await new AxeBuilder({ page }).analyze()).violations, path).toEqual([]);
  }
  const other = await browser.newContext({ storageState: stateOf('planner') });
  const theirs = await other.newPage();
  for (const path of ['/people', '/people/nobody', '/tokens']) {
    const answer = await theirs.goto(path);
    expect(answer?.status(), path).toBe(403);
    await expect(theirs.getByRole('button', { name: /Make|Revoke|Retire/ })).toHaveCount(0);
  }
  await other.close();
});
