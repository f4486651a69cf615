import { expect, test as setup } from '@playwright/test';
import { signIn, stateOf } from './person';

// Signing in is limited to a few tries in ten seconds from one address: it is done once for all tests.
setup('a wrong password is told, the right one leads to the page that was asked for', async ({ page }) => {
  await page.goto('/sets/CP-108/candidates');
  await expect(page).toHaveURL(/\/sign-in\?to=/);
  await signIn(page, 'technician', 'not-the-password');
  await expect(page.getByText('E-mail or password is wrong.')).toBeVisible();
  await signIn(page, 'technician');
  await expect(page).toHaveURL(/\/sets\/CP-108\/candidates$/);
  await page.context().storageState({ path: stateOf('technician') });
});

setup.describe('without script', () => {
  setup.use({ javaScriptEnabled: false });
  setup('the planner signs in, and never to another site', async ({ page }) => {
    await page.goto('/sign-in?to=//elsewhere.example/');
    await signIn(page, 'planner');
    await expect(page).toHaveURL((url) => url.pathname === '/' && url.hostname === 'localhost');
    await page.context().storageState({ path: stateOf('planner') });
  });

  setup('the administrator signs in', async ({ page }) => {
    await page.goto('/sign-in');
    await signIn(page, 'administrator');
    await expect(page).toHaveURL((url) => url.pathname === '/');
    await page.context().storageState({ path: stateOf('administrator') });
  });
});
