import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { complaintsOf, stateOf } from './person';
import { platePhoto } from './plate-photo';

test.use({ storageState: stateOf('planner') });

const transformOf = (page: Page) =>
  page.locator('.plate-window img').evaluate((image: HTMLElement) => image.style.transform);
const windowOf = (page: Page) => page.getByRole('application', { name: /^The picture/ });

/** Waits until the picture is there and measured. */
async function seen(page: Page) {
  const image = page.locator('.plate-window img');
  await expect.poll(() => image.evaluate((one: HTMLImageElement) => one.naturalWidth)).toBeGreaterThan(0);
}

/** Two fingers spread on the picture make it larger. */
async function spread(page: Page) {
  const { x = 0, y = 0, width = 0, height = 0 } = (await windowOf(page).boundingBox()) ?? {};
  const scaleOf = async () => Number(/scale\(([\d.]+)\)/.exec(await transformOf(page))?.[1]);
  const before = await scaleOf();
  const hand = await page.context().newCDPSession(page);
  const fingers = (apart: number) => [-1, 1].map((side) => ({ x: x + width / 2 + side * apart, y: y + height / 2 }));
  await hand.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: fingers(30) });
  for (const apart of [36, 42, 48])
    await hand.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: fingers(apart) });
  await hand.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await expect.poll(scaleOf).toBeGreaterThan(before * 1.4);
}

test('a motor is typed from a picture on this device, which is kept with it when it is saved', async ({
  page,
}, info) => {
  const complaints = complaintsOf(page);
  const number = `V-${info.project.name}-${info.retry}`;
  await page.goto('/motors/new');
  await expect(windowOf(page)).toHaveCount(0);
  await page.getByLabel('A picture of the plate').setInputFiles(await platePhoto(number));
  await seen(page);
  const before = await page.evaluate(() => document.querySelector('.plate-window img')?.getAttribute('src'));
  expect(before).toMatch(/^blob:/);

  await page.getByRole('button', { name: 'Turn' }).click();
  expect(await transformOf(page)).toContain('rotate(90deg)');
  await page.getByRole('button', { name: 'Larger' }).click();
  await page.getByRole('button', { name: 'Larger' }).click();
  await expect(page.getByText('225 %, turned 90°')).toBeVisible();
  await page.getByRole('button', { name: 'Lighter' }).click();
  await page.getByRole('button', { name: 'Contrast +' }).click();
  expect(await page.locator('.plate-window img').evaluate((one: HTMLElement) => one.style.filter)).toBe(
    'brightness(1.25) contrast(1.25)',
  );
  await windowOf(page).focus();
  await page.keyboard.press('ArrowRight');
  expect(await transformOf(page)).toMatch(/^translate\(-\d+(\.\d+)?px, 0px\)/);
  await page.keyboard.press('+');
  await expect(page.getByText('338 %, turned 90°')).toBeVisible();
  await page.keyboard.press('-');
  const held = await transformOf(page);
  const { x = 0, y = 0, width = 0, height = 0 } = (await windowOf(page).boundingBox()) ?? {};
  await page.mouse.move(x + width / 2, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width / 2 + 20, y + height / 2 + 10, { steps: 3 });
  await page.mouse.up();
  expect(await transformOf(page)).not.toBe(held);
  if (info.project.name === 'phone') await spread(page);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  // It stays in sight, and on a phone takes no more than 40 % of it.
  await page.getByLabel('Note').scrollIntoViewIfNeeded();
  await expect(windowOf(page)).toBeInViewport({ ratio: 0.9 });
  const { over, share, small } = await page.evaluate(() => {
    const picture = document.querySelector('.plate-picture');
    const pressed = [...document.querySelectorAll('.plate-tools button, .plate-picture summary')];
    const sizes = pressed.map((one) => one.getBoundingClientRect());
    return {
      over: document.documentElement.scrollWidth - window.innerWidth,
      share: (picture?.getBoundingClientRect().height ?? 0) / window.innerHeight,
      small: sizes.filter(({ width, height }) => width < 44 || height < 44).length,
    };
  });
  expect([over, small]).toEqual([0, 0]);
  if (info.project.name === 'phone') expect(share).toBeLessThanOrEqual(0.4);

  // A save that is refused, twice, loses neither the picture nor how it lies, nor the text of another form.
  const text = 'FRAME 213T\nHP 7½ VOLTS 230/460\nAMPS 19.4/9.7 RPM 1755 HZ 60';
  await page.getByLabel('What stands on the plate').fill(text);
  for (const place of ['', 'at repair']) {
    if (place !== '') await page.getByLabel('Place').selectOption({ label: place });
    const answered = page.waitForResponse((answer) => answer.request().method() === 'POST');
    await page.getByRole('button', { name: 'Save' }).click();
    await answered;
    await expect(page.getByRole('alert').first()).toContainText('not right yet');
    const unplaced = page.locator('.wrong', { hasText: 'choose one of the places' });
    await expect(unplaced).toHaveCount(place === '' ? 1 : 0);
    await seen(page);
    expect(await transformOf(page)).toContain('rotate(90deg)');
  }
  // Neither does reading the plate's text into the fields.
  await expect(page.getByLabel('What stands on the plate')).toHaveValue(text);
  await page.getByRole('button', { name: 'Read it into the fields' }).click();
  await expect(page.getByLabel('Frame', { exact: true })).toHaveValue('213T');
  await seen(page);
  expect(await transformOf(page)).toContain('rotate(90deg)');

  await page.getByLabel('Plant number').fill(number);
  await page.getByLabel('Place').selectOption({ label: 'at repair' });
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await expect(page.getByText('The photograph is kept.')).toBeVisible();
  await expect(page.locator('#photographs').getByRole('link', { name: /^Plate/ })).toHaveCount(1);

  // At the next edit the kept one stands beside the form.
  await page.goto(`/motors/${number}/edit`);
  await seen(page);
  await expect(page.locator('.plate-window img')).toHaveAttribute('src', /^\/pictures\/[0-9a-f-]{36}$/);
  await page.getByRole('button', { name: 'Turn' }).click();
  expect(await transformOf(page)).toContain('rotate(90deg)');
  await page.getByLabel('Beside the form').selectOption({ label: 'none' });
  await expect(windowOf(page)).toHaveCount(0);
  // The same picture once more, and nothing else: it is kept once.
  await page.getByLabel('A picture of the plate').setInputFiles(await platePhoto(number));
  await seen(page);
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('This photograph was kept already.')).toBeVisible();
  await expect(page.locator('#photographs li')).toHaveCount(1);
  expect(complaints).toEqual([]);
});

test('S16 what is no picture is shown to nobody, and the motor is saved without it', async ({ page }, info) => {
  const number = `V-${info.project.name}-drawing-${info.retry}`;
  let wasRun = false;
  page.on('dialog', async (dialog) => {
    wasRun = true;
    await dialog.dismiss();
  });
  await page.goto('/motors/new');
  const drawing =
    '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="90" onload="alert(1)"><script>alert(1)</script></svg>';
  for (const [name, mimeType, told] of [
    ['plate.svg', 'image/svg+xml', 'cannot be shown or kept'],
    ['plate.html', 'text/html', 'cannot be shown or kept'],
    ['plate.jpg', 'image/jpeg', 'it is damaged, or none'],
  ] as const) {
    await page.getByLabel('A picture of the plate').setInputFiles({ name, mimeType, buffer: Buffer.from(drawing) });
    await expect(page.getByText(told)).toBeVisible();
  }
  await page.getByLabel('Plant number').fill(number);
  await page.getByLabel('Place').selectOption({ label: 'at repair' });
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await expect(page.getByText('text or a drawing')).toBeVisible();
  await expect(page.locator('#photographs li')).toHaveCount(0);
  expect(wasRun).toBe(false);
});

test('without script a picture is kept with a motor too', async ({ browser }, info) => {
  const number = `V-${info.project.name}-plain-${info.retry}`;
  const context = await browser.newContext({ storageState: stateOf('planner'), javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('/motors/new');
  await page.getByLabel('A picture of the plate').setInputFiles(await platePhoto(number));
  await page.getByLabel('Plant number').fill(number);
  await page.getByLabel('Place').selectOption({ label: 'at repair' });
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('The photograph is kept.')).toBeVisible();
  await page.getByRole('link', { name: 'Edit' }).click();
  await expect(page.getByRole('img', { name: 'The plate' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Larger' })).toHaveCount(0);
  await context.close();
});

test('a picture of more than 15 MB is told at once', async ({ page }) => {
  await page.goto('/motors/new');
  const large = { name: 'large.jpg', mimeType: 'image/jpeg', buffer: Buffer.alloc(15 * 1024 * 1024 + 1) };
  await page.getByLabel('A picture of the plate').setInputFiles(large);
  await expect(page.getByText('larger than 15 MB')).toBeVisible();
  await expect(windowOf(page)).toHaveCount(0);
});
