import fs from 'node:fs';
import { type BrowserContext, type BrowserContextOptions, chromium, expect, type Page, test } from '@playwright/test';
import { PAPERS } from '@/app/labels/papers';
import { browser } from '../../scripts/chromium.mjs';
import { film, photo } from './camera-film';
import { complaintsOf, stateOf } from './person';
import { isWhole } from './whole';

const TAG = 'OR-115';
const MOTOR = 'M-0145';

const codeOn = async (page: Page, path: string) => {
  await page.goto(path);
  const line = page.locator('p', { has: page.getByRole('link', { name: 'Print its label' }) });
  return String(/[0-9A-Z]{4}-[0-9A-Z]{4}/.exec(String(await line.textContent()))?.[0]);
};

/** The QR code of a label as the sheet shows it. */
async function drawnCode(page: Page, question: string): Promise<Buffer> {
  await page.goto(`/labels?${question}&paper=a4-2x4`);
  return page.locator('.one-label svg').first().screenshot();
}

test('a label is reached from its set, and its sheet chosen and begun anywhere', async ({ page }) => {
  const complaints = complaintsOf(page);
  const code = await codeOn(page, `/sets/${TAG}`);
  await page.getByRole('link', { name: 'Print its label' }).click();
  await expect(page.locator('.label-tag')).toHaveText([TAG]);
  await expect(page.locator('.label-code b')).toHaveText([code]);
  await expect(page.getByText('No phone reaches that address.')).toBeVisible(); // the tests ask by localhost
  await page.getByLabel('Paper').selectOption({ label: 'Letter, 2 × 5, 101.6 × 50.8 mm' });
  await page.getByLabel('Copies of each').fill('2');
  await page.getByRole('button', { name: 'Show the labels' }).click();
  await page.getByRole('button', { name: 'Begin at label 10' }).click();
  await expect(page.getByRole('button', { name: 'Begin at label 10' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByLabel('First label')).toHaveValue('10');
  await expect(page.locator('.label-sheet')).toHaveCount(2);
  await expect(page.locator('.label-tag')).toHaveText([TAG, TAG]);
  await isWhole(page, 'labels');
  await page.getByLabel('First label').fill('11');
  await page.getByRole('button', { name: 'Show the labels' }).click();
  await expect(page.getByText('“11” is no whole number from 1 to 10')).toBeVisible();
  await expect(page.locator('.label-sheet')).toHaveCount(0);
  await page.getByLabel('First label').fill('1');
  await page.getByLabel('Labels of').selectOption({ label: 'all motors' });
  await page.getByRole('button', { name: 'Show the labels' }).click();
  await expect.poll(() => page.locator('.one-label').count()).toBeGreaterThan(20);
  expect(complaints).toEqual([]);
});

test.describe('hostile and long tags', () => {
  test.use({ storageState: stateOf('planner') }); // a technician enters no set

  test('S3 come out on a label as text, on one line, whole', async ({ page }, info) => {
    let wasRun = false;
    page.on('dialog', (dialog) => {
      wasRun = true;
      return dialog.dismiss();
    });
    const own = `${info.project.name}${info.retry}`;
    const tags = [
      `<script>alert(1)</script>${own}`,
      `"><svg onload=alert(1)>\u202e${own}`,
      `${'W'.repeat(60 - own.length)}${own}`,
    ];
    for (const tag of tags) {
      await page.goto('/sets/new');
      await page.getByLabel('Tag', { exact: true }).fill(tag);
      await page.getByLabel('What it serves').fill('<img src=x onerror=alert(1)>');
      await page.getByLabel('Held by').selectOption({ index: 1 });
      await page.getByRole('button', { name: 'Save' }).click();
      await expect(page.getByText('Saved.')).toBeVisible();
    }
    for (const { id } of PAPERS) {
      await page.goto(`/labels?paper=${id}&${tags.map((tag) => `tag=${encodeURIComponent(tag)}`).join('&')}`);
      expect((await page.locator('.label-tag').allTextContents()).sort()).toEqual([...tags].sort());
      const cut = await page.locator('.label-tag').evaluateAll((all) =>
        all
          .filter((one) => {
            const range = document.createRange();
            range.selectNodeContents(one);
            const text = range.getBoundingClientRect();
            const box = one.getBoundingClientRect();
            return text.right > box.right + 0.5 || text.height > 2 * Number.parseFloat(getComputedStyle(one).fontSize);
          })
          .map((one) => one.textContent),
      );
      expect(cut, id).toEqual([]);
    }
    expect(wasRun).toBe(false);
  });
});

test('a label’s link leads through the sign-in to its set, typed too, and a wrong one is told', async ({
  page,
  browser: other,
}) => {
  const code = await codeOn(page, `/sets/${TAG}`);
  await page.goto(`/l/${code.toLowerCase()}`);
  await expect(page).toHaveURL(new RegExp(`/sets/${TAG}$`));
  await page.goto('/');
  await page.getByRole('searchbox').fill(code.replace('-', '').toLowerCase());
  await page.getByRole('button', { name: 'Find' }).click();
  await expect(page).toHaveURL(new RegExp(`/sets/${TAG}$`));
  const ofMotor = await codeOn(page, `/motors/${MOTOR}`);
  await page.goto(`/find?q=${ofMotor}`);
  await expect(page).toHaveURL(new RegExp(`/motors/${MOTOR}$`));
  const wrong = await page.goto('/l/1023-456K');
  expect(wrong?.status()).toBe(404);
  await expect(page.getByText('at least one sign is wrong, read it again')).toBeVisible();
  const unknown = await page.goto('/l/1023-456J');
  expect(unknown?.status()).toBe(404);
  const out = await other.newPage({ storageState: { cookies: [], origins: [] } });
  await out.goto(`/l/${code}`);
  await expect(out).toHaveURL(/\/sign-in\?to=/);
  await out.close();
});

test('the code is typed where there is no camera, and a wrong one is told', async ({ page }) => {
  const complaints = complaintsOf(page);
  const code = await codeOn(page, `/motors/${MOTOR}`);
  await page.goto('/');
  await page.getByRole('link', { name: 'Scan' }).click();
  await expect(page).toHaveURL(/\/scan$/);
  await page.getByRole('button', { name: 'Open the camera' }).click();
  await expect(page.getByText('Take a photo of the code, or type it.')).toBeVisible();
  await expect(page.getByLabel('A photo of the code')).toBeVisible();
  await page.getByLabel('The code on the label').fill('1O23-456K');
  await page.getByRole('button', { name: 'Go to it' }).click();
  await expect(page.getByText('at least one sign is wrong, read it again')).toBeVisible();
  await isWhole(page, 'scan');
  await page.getByLabel('The code on the label').fill(code.toLowerCase().replaceAll('0', 'o'));
  await page.getByRole('button', { name: 'Go to it' }).click();
  await expect(page).toHaveURL(new RegExp(`/motors/${MOTOR}$`));
  expect(complaints).toEqual([]);
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('a typed code finds its motor', async ({ page }) => {
    const code = await codeOn(page, `/motors/${MOTOR}`);
    await page.goto('/scan');
    await page.getByLabel('The code on the label').fill(code);
    await page.getByRole('button', { name: 'Go to it' }).click();
    await expect(page).toHaveURL(new RegExp(`/motors/${MOTOR}$`));
  });
});

test('a photo of a code is read, one without is told, and so is another code', async ({ page }) => {
  const picture = await drawnCode(page, `tag=${TAG}`);
  await page.goto('/scan');
  const choose = async (buffer: Buffer, mimeType = 'image/jpeg') =>
    page.getByLabel('A photo of the code').setInputFiles({ name: 'photo.jpg', mimeType, buffer });
  await choose(Buffer.from('no picture'));
  await expect(page.getByText('That file is no picture that this browser shows.')).toBeVisible();
  await choose(await photo(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="300" height="300"/>')));
  await expect(page.getByText('No code was found in the photograph.')).toBeVisible();
  await choose(await photo(picture));
  await expect(page).toHaveURL(new RegExp(`/sets/${TAG}$`));
});

test.describe('with a camera', () => {
  test('a label held before it leads to its set at once, by our own reader, from our own address', async ({
    page,
    baseURL,
  }, info) => {
    const code = await codeOn(page, `/sets/${TAG}`);
    const file = info.outputPath('label.y4m');
    await film(await drawnCode(page, `tag=${TAG}`), file);
    await withBrowser([...CAMERA, `--use-file-for-fake-video-capture=${file}`], async (open) => {
      const context = await open({
        baseURL: String(baseURL),
        ...shapeOf(info.project.name),
      });
      const seen = await context.newPage();
      const hosts = new Set<string>();
      seen.on('request', (request) => hosts.add(new URL(request.url()).host));
      const complaints = complaintsOf(seen);
      await seen.goto('/scan');
      expect(await seen.evaluate(() => 'BarcodeDetector' in window)).toBe(false);
      await seen.getByRole('button', { name: 'Open the camera' }).click();
      await expect(seen).toHaveURL(new RegExp(`/sets/${TAG}$`));
      await expect(seen.getByText(code)).toBeVisible();
      expect([...hosts]).toEqual([new URL(String(baseURL)).host]);
      expect(complaints).toEqual([]);
    });
  });

  test('it is closed by its button and when the page is left', async ({ baseURL }, info) => {
    await withBrowser(CAMERA, async (open) => {
      const context = await open({ baseURL: String(baseURL), ...shapeOf(info.project.name) });
      const page = await context.newPage();
      await page.addInitScript(() => {
        const given = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
        navigator.mediaDevices.getUserMedia = async (asked) => {
          const stream = await given(asked);
          Object.assign(window, { given: stream });
          return stream;
        };
      });
      const states = () =>
        page.evaluate(() =>
          (window as unknown as { given: MediaStream }).given.getTracks().map(({ readyState }) => readyState),
        );
      await page.goto('/scan');
      await page.getByRole('button', { name: 'Open the camera' }).click();
      await expect(page.getByLabel('What the camera sees')).toBeVisible();
      await isWhole(page, 'scan with a camera');
      expect(await states()).toEqual(['live']);
      await page.getByRole('button', { name: 'Close the camera' }).click();
      expect(await states()).toEqual(['ended']);
      await page.getByRole('button', { name: 'Open the camera' }).click();
      await expect(page.getByLabel('What the camera sees')).toBeVisible();
      await page.getByRole('link', { name: 'Register' }).first().click();
      await expect(page).toHaveURL(/\/$/);
      expect(await states()).toEqual(['ended']);
    });
  });

  test('a refused one is told, and the other ways stay', async ({ baseURL }) => {
    await withBrowser(['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream=deny'], async (open) => {
      const refused = await (await open({ baseURL: String(baseURL) })).newPage();
      await refused.goto('/scan');
      await refused.getByRole('button', { name: 'Open the camera' }).click();
      await expect(refused.getByText('The camera was refused.')).toBeVisible();
      await expect(refused.getByRole('button', { name: 'Try the camera again' })).toBeEnabled();
      await expect(refused.getByLabel('The code on the label')).toBeVisible();
    });
  });

  test('without https it is said why, and a code is typed', async ({ page, baseURL }) => {
    const code = await codeOn(page, `/sets/${TAG}`);
    const { port } = new URL(String(baseURL));
    const state = JSON.parse(fs.readFileSync(stateOf('technician'), 'utf8'));
    for (const cookie of state.cookies) cookie.domain = 'plant.test';
    await withBrowser(['--host-resolver-rules=MAP plant.test 127.0.0.1'], async (open) => {
      const insecure = await (await open({ baseURL: `http://plant.test:${port}`, storageState: state })).newPage();
      await insecure.goto('/scan');
      await insecure.getByRole('button', { name: 'Open the camera' }).click();
      await expect(insecure.getByText('only on an address that begins with https')).toBeVisible();
      await insecure.getByLabel('The code on the label').fill(code);
      await insecure.getByRole('button', { name: 'Go to it' }).click();
      await expect(insecure).toHaveURL(new RegExp(`/sets/${TAG}$`));
    });
  });
});

/** Chromium's own picture for a camera, given without a question. */
const CAMERA = ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];

type Open = (options: BrowserContextOptions) => Promise<BrowserContext>;

/** A browser with its own flags, of somebody signed in. */
async function withBrowser(flags: string[], use: (open: Open) => Promise<void>): Promise<void> {
  const root = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const own = await chromium.launch({ ...browser(), args: [...root, ...flags] });
  try {
    await use((options) => own.newContext({ storageState: stateOf('technician'), ...options }));
  } finally {
    await own.close();
  }
}

const shapeOf = (project: string): BrowserContextOptions =>
  project === 'phone' ? { viewport: { width: 360, height: 740 }, hasTouch: true } : {};
