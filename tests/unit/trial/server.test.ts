import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serve, type TrialServer } from "../../../src/entries/trial-build/server";

const folder = mkdtempSync(join(tmpdir(), "evenfoot-served-"));
let server: TrialServer;

beforeAll(async () => {
  mkdirSync(join(folder, "page"));
  writeFileSync(join(folder, "page/index.html"), "page");
  writeFileSync(join(folder, "page/pane.html"), "pane");
  writeFileSync(join(folder, "secret.txt"), "secret");
  server = await serve([{ path: "/", folder: join(folder, "page") }], 0);
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

const get = (path: string, init?: RequestInit) => fetch(server.address + path, init);

test("only this computer can reach the server", () => {
  expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
});

test("the page and the pane come with their policies, which name no other server", async () => {
  const page = await get("");
  expect(await page.text()).toBe("page");
  const pane = await get("pane.html");
  expect(await pane.text()).toBe("pane");
  const [pagePolicy, panePolicy] = [page, pane].map(({ headers }) => headers.get("content-security-policy"));
  expect(panePolicy).toContain(
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'",
  );
  for (const policy of [pagePolicy, panePolicy]) {
    expect(policy).toContain("script-src 'self';");
    expect(policy).not.toMatch(/https?:|\*|unsafe-eval/);
  }
});

test.each(["nothing.html", "..%2fsecret.txt", "%2e%2e/secret.txt", "..%5csecret.txt", "%", "page/../../secret.txt"])(
  "%s is not found",
  async (path) => {
    const response = await get(path);
    expect(response.status).toBe(404);
    expect(await response.text()).not.toContain("secret");
  },
);

test("nothing can be sent to it", async () => {
  expect((await get("", { method: "POST", body: "x" })).status).toBe(404);
});

test("where the port is taken it finds another", async () => {
  const port = Number(new URL(server.address).port);
  const second = await serve([{ path: "/", folder }], port);
  expect(second.address).not.toBe(server.address);
  await second.close();
});
