import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { buildOptions, LOCAL_ADDRESS } from "../../src/entries/excel-build/options";
import { buildInto } from "./build-into";

const ADDRESS = "https://herd.example/evenfoot";
const folder = mkdtempSync(join(tmpdir(), "evenfoot-"));
const read = (file: string): string => readFileSync(join(folder, file), "utf8");

beforeAll(() => {
  expect(buildInto(folder, "--address", ADDRESS, "--development")).toMatchObject({ status: 0 });
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

describe("the folder that the build makes", () => {
  test("holds every file that manifest, metadata and pages name", () => {
    const named = ["manifest.xml", "functions.json"].flatMap((file) =>
      [...read(file).matchAll(/https:\/\/herd\.example\/evenfoot\/([^"#]+)/g)].map((match) => match[1]!),
    );
    const inPages = ["taskpane.html", "help/functions.html"].flatMap((page) =>
      [...read(page).matchAll(/(?:src|href)="([^"#][^"]*)"/g)].map((match) => join(dirname(page), match[1]!)),
    );
    expect(named.length).toBeGreaterThan(10);
    expect(inPages.length).toBeGreaterThan(3);
    for (const file of [...named, ...inPages]) expect([file, existsSync(join(folder, file))]).toEqual([file, true]);
  });

  test("has nothing left to fill in", () => {
    for (const file of ["manifest.xml", "functions.json", "taskpane.html"]) expect(read(file)).not.toMatch(/\{\{|\}\}/);
  });

  test("holds Office.js as Microsoft made it, with its licence", () => {
    const source = dirname(require.resolve("@microsoft/office-js/dist/office.js"));
    const scripts = readdirSync(join(folder, "office")).filter((file) => file.endsWith(".js"));
    expect(scripts).toEqual(expect.arrayContaining(["office.js", "excel-web-16.00.js", "excel-win32-16.01.js"]));
    for (const file of scripts) {
      expect(readFileSync(join(folder, "office", file)).equals(readFileSync(join(source, file)))).toBe(true);
    }
    expect(read("office/LICENSE.md")).toContain("MICROSOFT SOFTWARE LICENSE TERMS");
  });

  test("loads Office.js and the functions before all else, and allows no script from elsewhere", () => {
    const page = read("taskpane.html");
    const scripts = [...page.matchAll(/<script src="([^"]+)"( defer)?/g)].map(([, file, defer]) => [file, defer ?? ""]);
    expect(scripts).toEqual([
      ["office/office.js", ""],
      ["functions.js", ""],
      ["taskpane.js", " defer"],
    ]);
    const policy = /Content-Security-Policy" content="([^"]+)"/.exec(page)![1]!;
    expect(policy).toContain("default-src 'none'; script-src 'self';");
    expect(policy).not.toContain("unsafe");
  });

  test("holds the licence and the notice", () => {
    expect(read("LICENSE")).toContain("MIT License");
    expect(read("NOTICE")).toContain("office/LICENSE.md");
  });
});

test("a folder that holds something else is left alone", () => {
  const { status, said } = buildInto(__dirname);
  expect(status).toBe(1);
  expect(said).toContain("--folder must be new, empty or made by an earlier build");
  expect(existsSync(__filename)).toBe(true);
}, 60_000);

describe("the switches of the build", () => {
  test("default to this machine, the release and a copy of Office.js", () => {
    expect(buildOptions([])).toEqual({
      address: LOCAL_ADDRESS,
      edition: "release",
      officeJs: "copy",
      folder: join(__dirname, "../../dist"),
    });
  });

  test("take an address, the development edition and Microsoft's servers", () => {
    expect(
      buildOptions([
        "--address",
        "https://a.example:8443/x/",
        "--development",
        "--office-js",
        "microsoft",
        "--folder",
        "made",
      ]),
    ).toEqual({
      address: "https://a.example:8443/x",
      edition: "development",
      officeJs: "microsoft",
      folder: resolve("made"),
    });
  });

  test.each([
    [["--address", "http://a.example"], "--address must be an https address"],
    [["--address", "a.example"], "--address must be an https address"],
    [["--address", 'https://a.example/"><script>'], "--address must be an https address"],
    [["--address", "https://a.example/?x=1"], "--address must be an https address"],
    [["--office-js", "elsewhere"], "--office-js must be copy or microsoft; got elsewhere"],
    [["--adress", "https://a.example"], "--adress"],
  ])("refuse %j", (args, message) => {
    expect(() => buildOptions(args)).toThrow(message);
  });
});
