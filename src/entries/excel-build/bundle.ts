import { createRequire } from "node:module";
import webpack from "webpack";

const { excel } = createRequire(__filename)("../../../webpack.config.js") as { readonly excel: webpack.Configuration };

/** Bundles what Excel loads into a folder. */
export async function bundle(target: string): Promise<void> {
  const compiler = webpack({ ...excel, output: { ...excel.output, path: target } });
  const stats = await new Promise<webpack.Stats | undefined>((resolve, reject) => {
    compiler.run((error, result) => (error ? reject(error) : resolve(result)));
  });
  await new Promise<void>((resolve, reject) => {
    compiler.close((error) => (error ? reject(error) : resolve()));
  });
  if (stats?.hasErrors()) throw new Error(stats.toString({ preset: "errors-only" }));
}
