import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { get } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { LOCAL_ADDRESS } from "../../src/entries/excel-build/options";
import { serveToExcel } from "../../src/entries/excel-build/serve";

const ROOT = join(__dirname, "../..");
const place = mkdtempSync(join(tmpdir(), "evenfoot-excel-"));
const folder = join(place, "dist");
const [ca, certificate, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((file) => join(place, file)) as [
  string,
  string,
  string,
];
afterAll(() => rmSync(place, { recursive: true }));

const said: string[] = [];
const complained: string[] = [];
const terminal = { say: (line: string) => said.push(line), complain: (line: string) => complained.push(line) };
beforeEach(() => [said, complained].forEach((lines) => (lines.length = 0)));

test("without the right to trust a certificate it says what to do, and makes nothing", async () => {
  const refused = (): Promise<never> => Promise.reject(new Error("not allowed to trust it"));
  expect(await serveToExcel(["--folder", folder], refused, terminal)).toBeUndefined();
  expect([said, existsSync(folder)]).toEqual([[], false]);
  expect(complained.join()).toMatch(/not allowed to trust it[\s\S]*npx office-addin-dev-certs install[\s\S]*--address/);
});

test("another address is refused", async () => {
  const args = ["--folder", folder, "--address", "https://your.server/evenfoot"];
  await expect(serveToExcel(args, () => Promise.resolve({}), terminal)).rejects.toThrow("leave out --address");
});

describe("with a certificate", () => {
  let child: ChildProcess;
  let told = "";

  beforeAll(async () => {
    const program = ["--import", "tsx", join(__dirname, "serve-program.ts"), folder, ca, certificate, key];
    child = spawn(process.execPath, program, { cwd: ROOT });
    await new Promise<void>((resolve, reject) => {
      const listen = (text: Buffer): void => {
        told += text.toString();
        if (/Ctrl\+C ends the server/.test(told)) resolve();
      };
      child.stdout!.on("data", listen);
      child.stderr!.on("data", listen);
      child.once("exit", () => reject(new Error(told)));
    });
  }, 120_000);
  afterAll(() => child.kill());

  test("says how to add the manifest on each platform", () => {
    for (const platform of ["Web", "Windows", "Mac"]) expect(told).toMatch(new RegExp(`^  ${platform} +\\S`, "m"));
    expect(told).toContain(join(folder, "manifest.xml"));
  });

  test.each([
    "manifest.xml",
    "functions.json",
    "functions.js",
    "taskpane.html",
    "icons/icon-32.png",
    "help/functions.html",
  ])("hands out %s as it stands in the folder", async (file) => {
    const { status, body } = await asked(`${LOCAL_ADDRESS}/${file}`);
    expect(status).toBe(200);
    expect(body.equals(readFileSync(join(folder, file)))).toBe(true);
  });
});

/** What the server hands out to one that trusts its certificate. */
function asked(address: string): Promise<{ readonly status: number | undefined; readonly body: Buffer }> {
  return new Promise((resolve, reject) => {
    get(address, { ca: readFileSync(ca) }, (answer) => {
      const pieces: Buffer[] = [];
      answer.on("data", (piece: Buffer) => pieces.push(piece));
      answer.on("end", () => resolve({ status: answer.statusCode, body: Buffer.concat(pieces) }));
    }).on("error", reject);
  });
}
