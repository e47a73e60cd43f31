// Screens as they are looked at: on a desk and on a phone, by day and by night, each with axe and without overflow.
import {expect, test} from "vitest";
import {desk, expectAccessible, expectNoOverflow, phone, shot, type Workshop} from "./bench.ts";

/** A name for the pictures, the address, and what stands there once the screen is ready. */
export type Look = readonly [name: string, path: () => string, ready: string];

/** Adds a test for every screen on every device in every light; a fault of the page fails it. */
export function lookAtEach(screens: readonly Look[], workshop: () => Workshop): void {
  for (const [name, path, ready] of screens) {
    test.each([["desk", desk, "light"], ["desk", desk, "dark"], ["phone", phone, "light"], ["phone", phone, "dark"]] as const)(`${name} on a %s, %o, %s`, async (device, viewport, colorScheme) => {
      const shop = workshop();
      const page = await shop.page(viewport, {colorScheme});
      await page.goto(shop.address + path());
      await page.locator(ready).first().waitFor();
      await page.waitForTimeout(300);
      await shot(page, `${name}-${device}-${colorScheme}`);
      await expectAccessible(page);
      await expectNoOverflow(page);
      expect(shop.faults.splice(0)).toEqual([]);
      await page.context().close();
    });
  }
}
