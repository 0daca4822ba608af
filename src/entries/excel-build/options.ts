import { join, resolve } from "node:path";
import { parseArgs } from "node:util";

/** What a build is made for. */
export interface BuildOptions {
  /** Where the files will be served, without a slash at the end. */
  readonly address: string;
  /** The development edition can be installed beside a release: own id, name and namespace. */
  readonly edition: "release" | "development";
  /** Microsoft asks published add-ins to load Office.js from its servers; a local copy keeps all on one server. */
  readonly officeJs: "copy" | "microsoft";
  /** The folder that is made; what it held before is removed. */
  readonly folder: string;
}

/** Where `npm run excel` serves. */
export const LOCAL_ADDRESS = "https://localhost:3443";

/** The folder that is made where no other is named. */
const FOLDER = join(__dirname, "../../../dist");

export const USAGE = `npm run build -- [--address https://...] [--development] [--office-js copy|microsoft] [--folder dist]
  --address      where the files will be served; ${LOCAL_ADDRESS} when left out
  --development  an edition with its own id, name and namespace, to install beside a release
  --office-js    copy: Office.js is served with the rest; microsoft: it is loaded from Microsoft's servers
  --folder       the folder to make; must be new, empty or made by an earlier build`;

/** Reads the switches of the command line. Throws an error that says what is wrong. */
export function buildOptions(args: readonly string[]): BuildOptions {
  const { values } = parseArgs({
    args: [...args],
    options: {
      address: { type: "string", default: LOCAL_ADDRESS },
      development: { type: "boolean", default: false },
      "office-js": { type: "string", default: "copy" },
      folder: { type: "string", default: FOLDER },
    },
  });
  const officeJs = values["office-js"];
  if (officeJs !== "copy" && officeJs !== "microsoft") {
    throw new Error(`--office-js must be copy or microsoft; got ${officeJs}`);
  }
  return {
    address: checkedAddress(values.address),
    edition: values.development ? "development" : "release",
    officeJs,
    folder: resolve(values.folder),
  };
}

/** Only characters that mean nothing to XML, HTML and JSON, into which the address is filled. */
const ADDRESS = /^https:\/\/[\w.-]+(:\d+)?(\/[\w.~-]+)*\/?$/;

function checkedAddress(text: string): string {
  if (!ADDRESS.test(text)) {
    throw new Error(`--address must be an https address such as https://example.org/evenfoot; got ${text}`);
  }
  return text.replace(/\/$/, "");
}
