import { Person } from './person.ts';
import type { Session } from './visit.ts';

/** Closes the tab, and opens the page anew in another of the same browser. */
export async function comeBack({ browser, page, address }: Session): Promise<Person> {
  const second = await browser.newPage();
  await page.close();
  await second.bringToFront();
  await second.setViewport({ width: 1440, height: 900 });
  await second.goto(address, { waitUntil: 'load' });
  const later = new Person(second);
  await later.atRest();
  return later;
}
