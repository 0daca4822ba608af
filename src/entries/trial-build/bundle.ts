import { createRequire } from "node:module";
import { join } from "node:path";
import webpack, { type Configuration } from "webpack";
import { serve, type TrialServer } from "./server";

const ROOT = join(__dirname, "../../..");

/** Builds the trial page into .cache/trial; what did not change since the last build comes from the file cache. */
export async function buildTrial(): Promise<void> {
  const configurations = createRequire(__filename)("../../../webpack.config.js") as Configuration[];
  const configuration = configurations.find(({ name }) => name === "trial");
  if (!configuration) throw new Error("webpack.config.js has no configuration named trial");
  const compiler = webpack(configuration);
  if (!compiler) throw new Error("webpack made no compiler for the trial page");
  await new Promise<void>((resolve, reject) => {
    compiler.run((error, stats) => {
      if (error) reject(error);
      else if (stats?.hasErrors()) reject(new Error(stats.toString({ preset: "errors-only" })));
      else resolve();
    });
  });
  // Closing writes the file cache.
  await new Promise<void>((resolve, reject) => compiler.close((error) => (error ? reject(error) : resolve())));
}

/** Serves the built page with the sample workbooks. */
export function serveTrial(port: number): Promise<TrialServer> {
  const mounts = [
    { path: "/sample-workbooks/", folder: join(ROOT, "sample-workbooks") },
    { path: "/", folder: join(ROOT, "src/trial/page") },
    { path: "/", folder: join(ROOT, ".cache/trial") },
  ];
  return serve(mounts, port);
}
