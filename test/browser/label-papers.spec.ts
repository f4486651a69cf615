import { expect, test } from '@playwright/test';
import { PAPERS } from '@/app/labels/papers';

// The table to choose from is the desk's, and paper is the same from a phone.
const MM = 96 / 25.4;
const TAG = 'OR-115';
const MOTOR = 'M-0145';

test('labels of what is chosen in a list, by whoever may read it', async ({ page }) => {
  await page.goto('/sets');
  await page
    .getByRole('checkbox', { name: /^Choose / })
    .nth(1)
    .check();
  await page
    .getByRole('checkbox', { name: /^Choose / })
    .nth(3)
    .check();
  await page.getByRole('button', { name: 'Print labels of the chosen' }).click();
  await expect(page.locator('.one-label')).toHaveCount(2);
  await expect(page.getByLabel('Labels of')).toHaveValue('');
  // What was chosen stays chosen when the paper changes.
  await page.getByLabel('Paper').selectOption('roll-62');
  await page.getByRole('button', { name: 'Show the labels' }).click();
  await expect(page.locator('.label-sheet')).toHaveCount(2);
  await page.goto('/motors?q=M-01');
  await page.getByRole('link', { name: 'Print labels of this list' }).click();
  await expect(page.locator('.label-tag').first()).toContainText('M-01');
  for (const name of await page.locator('.label-tag').allTextContents()) expect(name).toContain('M-01');
});

test('every label stands on paper where the paper has it, on a page of its size, and nothing else does', async ({
  page,
}) => {
  for (const paper of PAPERS) {
    const perSheet = paper.columns * paper.rows;
    await page.emulateMedia({ media: 'screen' });
    await page.goto(`/labels?tag=${TAG}&number=${MOTOR}&paper=${paper.id}&copies=${Math.min(15, perSheet)}`);
    await page.emulateMedia({ media: 'print' });
    const sheets = await page.locator('.label-sheet').evaluateAll((all) =>
      all.map((sheet) => {
        const page = sheet.getBoundingClientRect();
        const box = (one: Element) => {
          const { left, top, width, height } = one.getBoundingClientRect();
          return { left: left - page.left, top: top - page.top, width, height };
        };
        const labels = [...sheet.querySelectorAll('.one-label')].map((one) => ({
          ...box(one),
          code: box(one.querySelector('svg') as Element),
          isCut: [...one.querySelectorAll('.label-tag, .label-code')].some((text) => {
            const range = document.createRange();
            range.selectNodeContents(text);
            return range.getBoundingClientRect().right > one.getBoundingClientRect().right;
          }),
        }));
        return { width: page.width, height: page.height, labels };
      }),
    );
    expect(sheets.length, paper.id).toBeGreaterThan(0);
    for (const { width, height, labels } of sheets) {
      expect(Math.abs(width / MM - paper.page.widthMm), paper.id).toBeLessThan(0.1);
      expect(Math.abs(height / MM - paper.page.heightMm), paper.id).toBeLessThan(0.1);
      for (const [place, label] of labels.entries()) {
        const [column, row] = [place % paper.columns, Math.floor(place / paper.columns)];
        const left = paper.first.leftMm + column * paper.pitch.acrossMm;
        const top = paper.first.topMm + row * paper.pitch.downMm;
        expect(Math.abs(label.left / MM - left), `${paper.id} ${place}`).toBeLessThan(0.1);
        expect(Math.abs(label.top / MM - top), `${paper.id} ${place}`).toBeLessThan(0.1);
        expect(Math.abs(label.width / MM - paper.label.widthMm)).toBeLessThan(0.1);
        expect(Math.abs(label.height / MM - paper.label.heightMm)).toBeLessThan(0.1);
        expect(Math.abs(label.code.width / MM - paper.codeMm)).toBeLessThan(0.1);
        expect(Math.abs(label.code.height / MM - paper.codeMm)).toBeLessThan(0.1);
        expect(label.isCut, `${paper.id} ${place}`).toBe(false);
      }
    }
    await expect(page.getByLabel('Paper')).toBeHidden();
    await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g), paper.id).toHaveLength(sheets.length);
    const [, width, height] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf) ?? [];
    expect(Math.abs((Number(width) / 72) * 25.4 - paper.page.widthMm), paper.id).toBeLessThan(0.5);
    expect(Math.abs((Number(height) / 72) * 25.4 - paper.page.heightMm), paper.id).toBeLessThan(0.5);
  }
});
