import { spawn } from "node:child_process";

/** The program that opens an address in the browser chosen by the user, and what it is handed before the address. */
const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>>> = {
  darwin: ["open"],
  win32: ["cmd", "/c", "start", ""],
};
const ELSEWHERE = ["xdg-open"] as const;

/** Opens an address in the default browser; where there is none, nothing happens: the address was printed. */
export function openBrowser(address: string): void {
  const [program, ...leading] = OPENERS[process.platform] ?? ELSEWHERE;
  spawn(program, [...leading, address], { stdio: "ignore", detached: true })
    .on("error", () => undefined)
    .unref();
}
