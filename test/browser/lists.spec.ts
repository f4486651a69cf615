import { expect, test } from '@playwright/test';
import { stateOf } from './person';
import { misprinted } from './readable/printed';

test.use({ storageState: stateOf('planner') });

test('a list on paper says its site, its moment and what it was asked for, and has nothing to press', async ({
  page,
}) => {
  await page.setViewportSize({ width: 718, height: 1047 }); // A4 within margins of 10 mm, at 96 px to the inch
  await page.emulateMedia({ media: 'print' });
  for (const [address, says] of [
    ['/sets?criticality=2&volts=480', /, as of .+\. Only: criticality 2 of 4; supply of 480 V\./],
    ['/motors?poles=4&place=on-shelf', /, as of .+\. Only: on a shelf; 4 poles\./],
    ['/faults?days=365', /, as of .+\. All of them\./],
    ['/audit?thing=motor&name=M-0145', /, as of .+\. Only: motor; tag or number M-0145\./],
    ['/hold?choose=1&criticality=1', /, as of .+\. Only: criticality 1 of 4\./],
  ] as const) {
    await page.goto(address);
    await expect(page.getByText(says), address).toBeVisible();
    expect(await misprinted(page), address).toEqual([]);
    await expect(page.locator('button:visible, select:visible'), address).toHaveCount(0);
  }
});

test('what an address asks and a list does not know is told, and the rest of it holds', async ({ page }) => {
  for (const [address, says] of [
    ['/sets?sort=blah&criticality=2', 'There is no sort “blah”: by tag is shown.'],
    ['/motors?place=nowhere&poles=4', 'There is no place “nowhere”: any is shown.'],
    ['/faults?days=7', 'There is no number of days “7”: what was closed within 90 days is shown.'],
    ['/audit?from=soon', 'There is no first day “soon”: any is shown.'],
    ['/hold?criticality=9', 'There is no criticality “9”: any is shown.'],
    ['/cover?sort=blah', 'There is no sort “blah”: by criticality is shown.'],
    ['/cover/matrix?criticality=9', 'There is no criticality “9”: any is shown.'],
    ['/cover/motors?state=x', 'There is no state “x”: any is shown.'],
    ['/review?sort=blah', 'There is no sort “blah”: soonest first is shown.'],
    ['/doubts?rule=x', 'There is no kind of finding “x”: any is shown.'],
  ] as const) {
    await page.goto(address);
    await expect(page.getByText(says), address).toBeVisible();
  }
  await page.goto('/sets?sort=blah&criticality=2');
  await expect(page.getByLabel('Criticality')).toHaveValue('2');
});
