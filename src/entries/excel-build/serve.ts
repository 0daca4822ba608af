import { createServer, type Server, type ServerOptions } from "node:https";
import { join } from "node:path";
import sirv from "sirv";
import { makeBuild } from "./make";
import { buildOptions, LOCAL_ADDRESS } from "./options";

const WITHOUT_CERTIFICATE = `Excel loads add-ins over https only, and this machine has no certificate for localhost that it trusts.
What to do:
  - Run "npx office-addin-dev-certs install" in a terminal and agree when the system asks whether to trust it; on
    Linux this needs an administrator. Then run "npm run excel" again.
  - Without that right: "npm run build -- --address https://your.server/path" and host dist/ on a server with https.
  - To try the functions without Excel: "npm start".`;

const INSTALL = `Add the manifest to Excel:
  Web      Home > Add-ins > More Add-ins > My Add-ins > Upload My Add-in, and choose the manifest.
  Windows  Put the manifest into a shared folder, add that folder under File > Options > Trust Center > Trust Center
           Settings > Trusted Add-in Catalogs (tick "Show in Menu"), restart Excel, Home > Add-ins > Shared Folder.
  Mac      Copy the manifest into ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef, restart Excel,
           Home > Add-ins.
After a change of the code run this command again and reload the pane. Ctrl+C ends the server.`;

/** Where the command tells how it goes, and what goes wrong. */
export interface Terminal {
  say(line: string): void;
  complain(line: string): void;
}

/**
 * Builds for this machine and serves the folder over https. Gives the server, which runs until it is closed; undefined,
 * with the reason told and what to do, where there is none.
 */
export async function serveToExcel(
  args: readonly string[],
  certificate: () => Promise<ServerOptions>,
  { say, complain }: Terminal,
): Promise<Server | undefined> {
  const options = buildOptions(args);
  if (options.address !== LOCAL_ADDRESS) throw new Error("npm run excel serves this machine; leave out --address");
  let credentials: ServerOptions;
  try {
    credentials = await certificate();
  } catch (error) {
    complain(`${String(error)}\n\n${WITHOUT_CERTIFICATE}`);
    return undefined;
  }
  await makeBuild(options);
  const server = createServer(credentials, sirv(options.folder, { dev: true, etag: true }));
  return new Promise((resolve) => {
    server.once("error", (error) => {
      complain(`cannot serve ${LOCAL_ADDRESS}: ${error.message}`);
      resolve(undefined);
    });
    server.listen(Number(new URL(LOCAL_ADDRESS).port), "localhost", () => {
      say(`Serving ${LOCAL_ADDRESS}; the manifest is ${join(options.folder, "manifest.xml")}\n\n${INSTALL}`);
      resolve(server);
    });
  });
}
