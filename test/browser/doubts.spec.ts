import { expect, type Page, test } from '@playwright/test';
import { enterMotor } from './enter-motor';
import { stateOf } from './person';
import { isWhole } from './whole';

test.use({ storageState: stateOf('planner') });

/** 7.5 hp takes about 9.7 A at 460 V: the doubtful current that no other run of the test enters. */
const plateOf = (amps: number) => `FRAME 213T\nHP 7½  VOLTS 460\nAMPS ${amps} RPM 1755 HZ 60\nENCL TEFC SF 1.15\nPH 3`;
const numberFor = (project: string, what: string) => `D-${project}-${what}`;

const enter = (page: Page, number: string, amps = 27.5) => enterMotor(page, number, plateOf(amps));

const line = (page: Page, number: string) => page.locator('.doubts > li').filter({ hasText: number });

test('a doubt leads from the desk to the very field, and goes when the field is right', async ({ page }, info) => {
  const number = numberFor(info.project.name, 'field');
  await enter(page, number);
  await page.goto(`/motors/${number}`);
  await page.getByRole('link', { name: '1 doubt' }).click();
  await expect(line(page, number)).toContainText('√3 × 460 V × 27.5 A = 21.91 kVA for 7.5 hp');
  await isWhole(page, 'the page of the motor');

  await page.goto('/desk');
  await page.getByRole('link', { name: 'Doubts' }).click();
  await page.getByRole('link', { name: 'Amps and power' }).click();
  await expect(page).toHaveURL(/\/doubts\?rule=amps$/);
  await expect(page.getByRole('heading', { name: 'Standing: Amps and power' })).toBeVisible();
  await isWhole(page, 'the page of the doubts');
  await line(page, number).getByRole('link', { name: 'Go to the field' }).click();
  await expect(page).toHaveURL(new RegExp(`/motors/${number}/edit#ratings\\.0\\.amps$`));
  const field = page.locator('input:target');
  await expect(field).toHaveValue('27.5');
  await expect(field).toBeInViewport();
  await field.fill('9.7');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await expect(page.getByRole('link', { name: '1 doubt' })).toHaveCount(0);
  await page.goto('/doubts?rule=amps');
  await expect(line(page, number)).toHaveCount(0);
});

test('a doubt is accepted with a reason and stands apart, until it is withdrawn', async ({ page }, info) => {
  const number = numberFor(info.project.name, 'accept');
  await enter(page, number);
  await page.goto('/doubts?rule=amps');
  await line(page, number).getByText('Accept it').click();
  await line(page, number).getByRole('button', { name: 'Accept' }).click();
  await expect(page.getByRole('alert').first()).toContainText('The reason must have 1 to 500 characters.');
  await isWhole(page, 'a refused acceptance');
  await line(page, number).getByLabel('Why it may stand').fill('Read twice: a rewound motor');
  await line(page, number).getByRole('button', { name: 'Accept' }).click();
  await expect(page.getByText('Accepted. It is raised again')).toBeVisible();
  await expect(page).toHaveURL(/rule=amps/);
  const accepted = page.locator('#accepted .doubts > li').filter({ hasText: number });
  await expect(accepted).toContainText('Read twice: a rewound motor');
  await isWhole(page, 'an accepted doubt');
  await accepted.getByRole('button', { name: `Withdraw the acceptance of ${number}` }).click();
  await expect(page.getByText('Withdrawn. The doubt stands again.')).toBeVisible();
  await expect(page.locator('#accepted').filter({ hasText: number })).toHaveCount(0);
  await expect(line(page, number)).toBeVisible();
});

test('a doubt is accepted and withdrawn without script', async ({ browser }, info) => {
  const context = await browser.newContext({ storageState: stateOf('planner'), javaScriptEnabled: false });
  const page = await context.newPage();
  const number = numberFor(info.project.name, 'plain');
  await enter(page, number);
  await page.goto('/doubts?rule=amps');
  await line(page, number).getByText('Accept it').click();
  await line(page, number).getByLabel('Raise it again on').fill('2020-01-01');
  await line(page, number).getByLabel('Why it may stand').fill('Seen at the motor');
  await line(page, number).getByRole('button', { name: 'Accept' }).click();
  await expect(page.getByText('The day must be a day after today').first()).toBeVisible();
  await expect(line(page, number).getByLabel('Why it may stand')).toHaveValue('Seen at the motor');
  await line(page, number).getByLabel('Raise it again on').fill('');
  await line(page, number).getByRole('button', { name: 'Accept' }).click();
  await expect(page.getByText('Accepted. It is raised again')).toBeVisible();
  await page.getByRole('button', { name: `Withdraw the acceptance of ${number}` }).click();
  await expect(page.getByText('Withdrawn. The doubt stands again.')).toBeVisible();
  await context.close();
});

test('a set tells its own doubts and those of the motor in it; a technician reads them and changes nothing', async ({
  browser,
}) => {
  const context = await browser.newContext({ storageState: stateOf('technician') });
  const page = await context.newPage();
  await page.goto('/sets/RF-201');
  await page.getByRole('link', { name: '1 doubt' }).click();
  await expect(line(page, 'RF-201')).toContainText('625 rpm at the pump, which may turn at 560 rpm at most');
  await expect(page.getByText('Accept it')).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'Go to the field' })).toHaveCount(0);
  await page.goto('/sets/OH-201');
  await expect(page.locator('.doubts > li')).toContainText('M-0523 (at repair)');
  await page.goto('/doubts');
  await expect(line(page, 'M-0521')).toContainText('1850 rpm stands on the plate: faster than the field turns');
  await context.close();
});
