import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { pathToFileURL } from "node:url";
import { cpuMsOfGroup } from "../process-group";
import type { BenchSheet, Figures } from "../sheet";
import { writeXlsx } from "../xlsx-file";
import type { Contender } from "./contender";

/** Many times the hundredth of a second in which the system counts the work of other processes. */
const SHORTEST_MS = 400;

/** What the program calls itself, or undefined where it is not installed. */
export function libreOfficeVersion(): string | undefined {
  const { status, stdout } = spawnSync("soffice", ["--version"], { encoding: "utf8" });
  return status === 0 ? stdout.trim().split(" ").slice(0, 2).join(" ") : undefined;
}

const POLL_MS = 5;
const LAST_LINE = "end";

/**
 * Opens the sheet as an .xlsx file in a LibreOffice without a screen. A macro in a profile of its own computes every
 * formula anew as often as a file asks for it, and times that by its own clock: starting and loading are not measured.
 */
export async function openInLibreOffice(
  sheet: BenchSheet,
  figures: (values: readonly unknown[]) => Figures | undefined,
): Promise<Contender> {
  const folder = mkdtempSync(join(tmpdir(), "evenfoot-bench-"));
  const at = (name: string): string => join(folder, name);
  writeXlsx(at("bench.xlsx"), sheet);
  makeProfile(at("profile"));
  const formulas = `${sheet.formulaColumn},0,${sheet.formulaColumn},${sheet.formulas.length - 1}`;
  const macro = `macro:///Standard.Bench.Serve("${pathToFileURL(at("bench.xlsx")).href}","${folder}","${formulas}")`;
  const office = spawn("soffice", [userInstallation(at("profile")), "--headless", "--nologo", "--norestore", macro], {
    // It leaves a file where it is started.
    cwd: folder,
    stdio: "ignore",
    detached: true,
  });
  const end = (): void => {
    killGroup(office);
    rmSync(folder, { recursive: true, force: true });
  };
  process.once("exit", end);
  let asked = 0;
  await answer(office, at(`answer-${asked}`));
  let values: readonly unknown[] = [];
  return {
    shortestMs: SHORTEST_MS,
    processGroup: office.pid!,
    async measure(times) {
      const cpuBefore = cpuMsOfGroup(office.pid!);
      asked++;
      writeFileSync(at("asking"), String(times));
      renameSync(at("asking"), at(`ask-${asked}`));
      const [milliseconds, ...results] = await answer(office, at(`answer-${asked}`));
      values = results.map((value) => (value === "" ? value : Number(value)));
      const cpuMs = (cpuMsOfGroup(office.pid!) - cpuBefore) / times;
      return { wallMs: Number(milliseconds) / times, cpuMs };
    },
    figures: () => figures(values),
    close: () => Promise.resolve(end()),
  };
}

/** Waits until the macro has written the file to its last line; gives the lines before that. */
async function answer(office: ChildProcess, path: string): Promise<readonly string[]> {
  for (;;) {
    const lines = existsSync(path) ? readFileSync(path, "utf8").trim().split("\n") : [];
    if (lines.at(-1) === LAST_LINE) return lines.slice(0, -1);
    if (office.exitCode !== null) throw new Error(`LibreOffice ended with code ${office.exitCode}`);
    await sleep(POLL_MS);
  }
}

function killGroup(office: ChildProcess): void {
  try {
    process.kill(-office.pid!, "SIGKILL");
  } catch {
    // It has ended by itself.
  }
}

const MACRO = `Option Explicit

Sub Serve(source As String, folder As String, cells As String)
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  Dim document As Object, range As Object, place, started As Long, times As Long, run As Long, asked As Long
  document = StarDesktop.loadComponentFromURL(source, "_blank", 0, hidden())
  place = Split(cells, ",")
  range = document.Sheets(0).getCellRangeByPosition(CLng(place(0)), CLng(place(1)), CLng(place(2)), CLng(place(3)))
  Answer(folder & "/answer-0", "open")
  asked = 1
  Do
    If FileExists(folder & "/ask-" & asked) Then
      times = Number(folder & "/ask-" & asked)
      started = GetSystemTicks()
      For run = 1 To times
        document.calculateAll()
      Next
      Answer(folder & "/answer-" & asked, CStr(GetSystemTicks() - started) & Results(range))
      asked = asked + 1
    End If
    Wait ${POLL_MS}
  Loop
End Sub

Function Results(range As Object) As String
  Dim rows, row As Long, text As String
  rows = range.getDataArray()
  For row = LBound(rows) To UBound(rows)
    text = text & Chr(10) & CStr(rows(row)(0))
  Next
  Results = text
End Function

Function Number(path As String) As Long
  Dim file As Integer, text As String
  file = FreeFile
  Open path For Input As #file
  Line Input #file, text
  Close #file
  Number = CLng(text)
End Function

Sub Answer(path As String, text As String)
  Dim file As Integer
  file = FreeFile
  Open path For Output As #file
  Print #file, text & Chr(10) & "${LAST_LINE}"
  Close #file
End Sub
`;

/** A new profile with the macro in its own library, which needs no leave to run. The first start fills the profile. */
function makeProfile(profile: string): void {
  spawnSync("soffice", [userInstallation(profile), "--headless", "--terminate_after_init"], {
    cwd: dirname(profile),
    stdio: "ignore",
  });
  const library = join(profile, "user/basic/Standard");
  const header = '<?xml version="1.0" encoding="UTF-8"?>\n';
  const script = MACRO.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
  writeFileSync(
    join(library, "Bench.xba"),
    `${header}<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Bench" script:language="StarBasic">${script}</script:module>`,
  );
  writeFileSync(
    join(library, "script.xlb"),
    `${header}<library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false" library:passwordprotected="false"><library:element library:name="Bench"/></library:library>`,
  );
}

function userInstallation(profile: string): string {
  return `-env:UserInstallation=${pathToFileURL(profile).href}`;
}
