import { createServer, type ServerOptions } from "node:https";
import { join } from "node:path";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import sirv from "sirv";
import { makeBuild } from "./excel-build/make";
import { buildOptions, LOCAL_ADDRESS } from "./excel-build/options";

/**
 * `npm run excel` builds for this machine and serves it to Excel over https. With `--development` it is the edition
 * that can be installed beside a release.
 */
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

async function certificate(): Promise<ServerOptions | undefined> {
  try {
    return await getHttpsServerOptions();
  } catch (error) {
    console.error(`${String(error)}\n\n${WITHOUT_CERTIFICATE}`);
    return undefined;
  }
}

async function main(args: readonly string[]): Promise<void> {
  const options = buildOptions(args);
  if (options.address !== LOCAL_ADDRESS) throw new Error("npm run excel serves this machine; leave out --address");
  const credentials = await certificate();
  if (credentials === undefined) {
    process.exitCode = 1;
    return;
  }
  await makeBuild(options);
  const server = createServer(credentials, sirv(options.folder, { dev: true, etag: true }));
  server.on("error", (error) => {
    console.error(`cannot serve ${LOCAL_ADDRESS}: ${error.message}`);
    process.exitCode = 1;
  });
  server.listen(Number(new URL(LOCAL_ADDRESS).port), "localhost", () => {
    console.log(`Serving ${LOCAL_ADDRESS}; the manifest is ${join(options.folder, "manifest.xml")}\n\n${INSTALL}`);
  });
}

main(process.argv.slice(2)).catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
