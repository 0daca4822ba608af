import { createRequire } from "node:module";
import webpack from "webpack";

const configurations = createRequire(__filename)("../../../webpack.config.js") as readonly webpack.Configuration[];

/** Bundles what Excel loads into a folder. */
export async function bundle(target: string): Promise<void> {
  const configuration = configurations.find(({ name }) => name === "excel");
  if (configuration === undefined) throw new Error("webpack.config.js must have a configuration named excel");
  const compiler = webpack({ ...configuration, output: { ...configuration.output, path: target } });
  const stats = await new Promise<webpack.Stats | undefined>((resolve, reject) => {
    compiler.run((error, result) => (error ? reject(error) : resolve(result)));
  });
  await new Promise<void>((resolve, reject) => {
    compiler.close((error) => (error ? reject(error) : resolve()));
  });
  if (stats?.hasErrors()) throw new Error(stats.toString({ preset: "errors-only" }));
}
