import { launchBrowser } from "/work/main/tests/browser/setup/browser.mjs";
const server = await launchBrowser();
process.env.BROWSER_ENDPOINT = server.wsEndpoint();
const { RecordPage } = await import("/work/main/tests/browser/record-page/open.ts");
const rp = await RecordPage.start();
const k = async (page, keys) => { for (const c of keys) await page.keyboard.press(c === "⏎" ? "Enter" : c); };
{
  const { page } = await rp.open("", {});
  await page.locator("summary").first().click(); await page.screenshot({ path: "/tmp/s1.png" });
  await page.getByRole("radio", {name: "where the horn turns hard"}).click(); await page.locator("summary").first().click();
  await page.locator("#record-cow").click();
  await k(page, "999⏎"); await page.screenshot({ path: "/tmp/s2.png" });
  await page.locator("#record-cow").fill("12"); await k(page, "⏎2lh85⏎88⏎"); await page.screenshot({ path: "/tmp/s3.png" });
  await k(page, "o4⏎su"); await page.screenshot({ path: "/tmp/s4.png" });
  await k(page, "⏎2arhb0⏎dd⏎2"); await page.setViewportSize({width:350,height:1200}); await k(page,"1"); await page.screenshot({ path: "/tmp/s5.png" });
  await page.reload(); await page.getByText("Go on with it").waitFor(); await page.screenshot({ path: "/tmp/s6.png" });
  await page.getByText("Go on with it").click(); await page.waitForTimeout(500); await k(page, "s"); await page.getByText("Saved. Cow").first().waitFor(); await page.evaluate(()=>scrollTo(0, 99999)); await page.screenshot({ path: "/tmp/s7.png" });
}
{ const { page } = await rp.open("?cows=40&findings=900", { colorScheme: "dark", viewport: { width: 350, height: 1000 } });
  await page.locator("#record-cow").click(); await k(page, "1003⏎2lhi"); await page.evaluate(()=>scrollTo(0,0)); await page.screenshot({ path: "/tmp/s8.png" }); }
await rp.close(); await server.close(); process.exit(0);
