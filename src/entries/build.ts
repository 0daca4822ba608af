import { makeBuild } from "./excel-build/make";
import { buildOptions, LOCAL_ADDRESS, USAGE } from "./excel-build/options";

/** `npm run build` makes dist/: the files to host at an address, and the manifest for it. */
async function main(args: readonly string[]): Promise<void> {
  if (args.includes("--help")) return console.log(USAGE);
  const options = buildOptions(args);
  await makeBuild(options);
  console.log(`Made ${options.folder} for ${options.address}. Host it there and install its manifest.xml.`);
  if (options.address === LOCAL_ADDRESS) {
    console.log("That is this machine: npm run excel serves it. For others, build with --address https://...");
  }
}

main(process.argv.slice(2)).catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
