import { fork } from "node:child_process";

const LONGEST_SECONDS = 600;

/** Starts a program that sends one answer, and waits for it. */
export function ask<T>(
  script: string,
  args: readonly string[],
  {
    execArgv = [],
    env = {},
  }: { readonly execArgv?: readonly string[]; readonly env?: Readonly<Record<string, string>> } = {},
): Promise<T> {
  return new Promise((resolve, reject) => {
    const child = fork(script, [...args], {
      execArgv: [...execArgv],
      env: { ...process.env, ...env },
      stdio: ["ignore", "ignore", "pipe", "ipc"],
    });
    let [answer, errors]: [T | undefined, string] = [undefined, ""];
    child.stderr!.on("data", (text: Buffer) => (errors += text.toString()));
    const timeout = setTimeout(() => {
      errors = `more than ${LONGEST_SECONDS} s`;
      child.kill("SIGKILL");
    }, LONGEST_SECONDS * 1000);
    child.on("message", (message) => (answer = message as T));
    child.on("exit", (code) => {
      clearTimeout(timeout);
      if (answer !== undefined) resolve(answer);
      else reject(new Error(errors.trim().split("\n").at(-1) || `it ended with code ${code}`));
    });
  });
}
