import { createReadStream, statSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, sep } from "node:path";

/** The pane and everything on it comes from this server and goes nowhere else. */
const PANE_POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; " +
  "frame-ancestors 'self'; base-uri 'none'; form-action 'none'";
/** The same for the page around it, where the grid writes its colours into a style element. */
const PAGE_POLICY = PANE_POLICY.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'; frame-src 'self'");
const PAGE = "index.html";

/** Only this computer can reach the server. */
const HOST = "127.0.0.1";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".map": "application/json",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** A folder of files and the path under which the server shows it. */
export interface Mount {
  readonly path: string;
  readonly folder: string;
}

export interface TrialServer {
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves folders on this computer. Tries the port, and takes any free one where it is in use; 0 asks for a free one.
 */
export async function serve(mounts: readonly Mount[], port: number): Promise<TrialServer> {
  const server = createServer((request, response) => answer(mounts, request, response));
  await listen(server, port).catch(async (error: NodeJS.ErrnoException) => {
    if (error.code !== "EADDRINUSE") throw error;
    await listen(server, 0);
  });
  return {
    address: `http://${HOST}:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, HOST, () => {
      server.off("error", reject);
      resolve();
    });
  });
}

function answer(mounts: readonly Mount[], request: IncomingMessage, response: ServerResponse): void {
  const file = request.method === "GET" ? fileFor(mounts, request.url ?? "/") : undefined;
  if (file === undefined) {
    response.writeHead(404, { "content-type": "text/plain" }).end("Not found");
    return;
  }
  response.writeHead(200, {
    "content-type": TYPES[extname(file)] ?? "application/octet-stream",
    "content-security-policy": file.endsWith(PAGE) ? PAGE_POLICY : PANE_POLICY,
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cache-control": "no-cache",
  });
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}

/** The file behind a path, if one of the folders has it; nothing outside the folders is reachable. */
function fileFor(mounts: readonly Mount[], url: string): string | undefined {
  const path = decodedPath(url);
  for (const mount of mounts) {
    if (path === undefined || !path.startsWith(mount.path)) continue;
    const rest = path.slice(mount.path.length) || PAGE;
    const file = normalize(join(mount.folder, rest));
    if (!file.startsWith(normalize(mount.folder) + sep)) continue;
    if (statSync(file, { throwIfNoEntry: false })?.isFile()) return file;
  }
  return undefined;
}

function decodedPath(url: string): string | undefined {
  try {
    return decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
}
