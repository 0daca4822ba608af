import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DOMParser, type Element } from "@xmldom/xmldom";
import { filled, valuesOf } from "../../src/entries/excel-build/filled";
import type { BuildOptions } from "../../src/entries/excel-build/options";
import { CHILDREN, ICON_SIZES, LONGEST } from "./manifest-schema";

const MANIFEST = join(__dirname, "../../manifest");
const ADDRESS = "https://herd.example/evenfoot";

function manifest(edition: BuildOptions["edition"]): Element {
  const values = valuesOf({ address: ADDRESS, edition, officeJs: "copy" }, "0.1.0");
  const text = filled(readFileSync(join(MANIFEST, "manifest.xml"), "utf8"), values);
  return new DOMParser().parseFromString(text, "text/xml").documentElement!;
}

function childrenOf(element: Element): Element[] {
  return [...element.childNodes].filter((node): node is Element => node.nodeType === node.ELEMENT_NODE);
}

function allOf(element: Element, name: string): Element[] {
  return [...element.getElementsByTagNameNS("*", name)];
}

function attributesOf(element: Element, name: string): string[] {
  return allOf(element, "*").flatMap((inner) => inner.getAttribute(name) ?? []);
}

const textOf = (element: Element, name: string): string => allOf(element, name)[0]?.textContent ?? "";

/** The name under which the schema lists an element. */
function typeOf(element: Element): string {
  const type = element.getAttribute("xsi:type") ?? element.localName!;
  const parent = element.parentNode as Element | null;
  return type === "Hosts" ? `${typeOf(parent!)}/Hosts` : type;
}

/** What in an element and below breaks the order of the schema. */
function faults(element: Element): string[] {
  const children = childrenOf(element);
  const type = typeOf(element);
  const allowed = CHILDREN[type];
  if (allowed === undefined) return children.length === 0 ? [] : [`${type} may have no children`];
  const names = children.map(({ localName }) => localName!);
  const plain = allowed.map((entry) => entry.replace(/[!*]/g, ""));
  const places = names.map((name) => plain.indexOf(name));
  const found = [
    ...names.filter((_, index) => places[index] === -1).map((name) => `${type} may not hold ${name}`),
    ...places.flatMap((place, index) =>
      place < (places[index - 1] ?? 0) ? [`${names[index]} too late in ${type}`] : [],
    ),
    ...allowed
      .filter((entry) => entry.includes("!") && !names.includes(entry.replace(/[!*]/g, "")))
      .map((entry) => `${type} must hold ${entry}`),
    ...plain
      .filter((name, index) => !allowed[index]!.includes("*") && names.filter((other) => other === name).length > 1)
      .map((name) => `${type} may hold ${name} once`),
  ];
  return [...found, ...children.flatMap(faults)];
}

const release = manifest("release");
const development = manifest("development");

describe.each([
  ["release", release],
  ["development", development],
] as const)("the manifest of the %s edition", (_, root) => {
  test("keeps the element order of the published schema", () => {
    expect(faults(root)).toEqual([]);
  });

  test("names only resources that it has, and has none that it does not name", () => {
    const resources = childrenOf(allOf(root, "Resources")[0]!).flatMap(childrenOf);
    const ids = resources.map((resource) => resource.getAttribute("id")!);
    const named = attributesOf(root, "resid");
    expect(new Set(ids).size).toBe(ids.length);
    expect([...new Set(named)].sort()).toEqual([...ids].sort());
    for (const id of [...ids, ...named]) expect(id.length).toBeLessThanOrEqual(LONGEST.id);
  });

  test("has no id twice among its groups and controls", () => {
    const ids = [...allOf(root, "Group"), ...allOf(root, "Control")].map((element) => element.getAttribute("id"));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("keeps texts within their limits", () => {
    const defaults = (name: string): string[] =>
      allOf(root, name).map((element) => element.getAttribute("DefaultValue") ?? "");
    const lists = (name: string): string[] =>
      allOf(root, name)
        .flatMap(childrenOf)
        .map((element) => element.getAttribute("DefaultValue") ?? "");
    const short = [...defaults("DisplayName"), ...lists("ShortStrings"), textOf(root, "ProviderName")];
    const long = [...lists("LongStrings"), root.getElementsByTagName("Description")[0]!.getAttribute("DefaultValue")!];
    for (const text of short)
      expect([text, text.length > 0 && text.length <= LONGEST.shortString]).toEqual([text, true]);
    for (const text of long) expect([text, text.length > 0 && text.length <= LONGEST.longString]).toEqual([text, true]);
  });

  test("has https addresses alone", () => {
    const addresses = [...attributesOf(root, "DefaultValue"), ...attributesOf(root, "Url")].filter((value) =>
      value.includes("//"),
    );
    expect(addresses).toContain(`${ADDRESS}/shortcuts.json`);
    expect(addresses.length).toBeGreaterThan(10);
    for (const address of addresses) {
      expect(address.startsWith(`${ADDRESS}/`)).toBe(true);
      expect(address.length).toBeLessThanOrEqual(LONGEST.url);
    }
  });

  test("gives every reference to the shared page the same resid", () => {
    const [runtime] = allOf(root, "Runtime");
    expect(runtime!.getAttribute("lifetime")).toBe("long");
    const shared = runtime!.getAttribute("resid");
    for (const name of ["Page", "Action"]) {
      expect(allOf(allOf(root, name)[0]!, "SourceLocation")[0]!.getAttribute("resid")).toBe(shared);
    }
    expect(allOf(root, "FunctionFile")[0]!.getAttribute("resid")).toBe(shared);
  });

  test("lists the icon sizes of the ribbon for group and button, each with a file of that size", () => {
    const icons = allOf(root, "Icon");
    expect(icons).toHaveLength(2);
    for (const icon of icons) {
      const images = childrenOf(icon);
      expect(images.map((image) => Number(image.getAttribute("size")))).toEqual(ICON_SIZES);
      for (const image of images) {
        const resource = allOf(allOf(root, "Images")[0]!, "Image").find(
          (candidate) => candidate.getAttribute("id") === image.getAttribute("resid"),
        );
        const file = resource!.getAttribute("DefaultValue")!.replace(ADDRESS, MANIFEST);
        expect([file, ...pngSize(file)]).toEqual([
          file,
          Number(image.getAttribute("size")),
          Number(image.getAttribute("size")),
        ]);
      }
    }
  });

  test("has the base icons at 32 and 64 pixels", () => {
    const file = (name: string): string =>
      allOf(root, name)[0]!.getAttribute("DefaultValue")!.replace(ADDRESS, MANIFEST);
    expect(pngSize(file("IconUrl"))).toEqual([32, 32]);
    expect(pngSize(file("HighResolutionIconUrl"))).toEqual([64, 64]);
  });

  test("has a GUID for an id and a version that Office takes", () => {
    expect(textOf(root, "Id")).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    expect(textOf(root, "Version")).toMatch(/^[1-9]\d{0,4}(\.\d{1,5}){3}$/);
  });
});

/** Width and height as the file's header states them. Source: PNG specification, IHDR chunk. */
function pngSize(path: string): [width: number, height: number] {
  const bytes = readFileSync(path);
  expect(bytes.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

function namespaceOf(root: Element): string | null {
  const id = allOf(root, "Namespace")[0]!.getAttribute("resid");
  return allOf(root, "String")
    .find((string) => string.getAttribute("id") === id)!
    .getAttribute("DefaultValue");
}

describe("the two editions", () => {
  test("keep apart what Excel tells add-ins apart by", () => {
    expect(namespaceOf(release)).toBe("HERD");
    expect(namespaceOf(development)).toBe("HERD.DEV");
    for (const name of ["Id", "DisplayName"]) {
      const told = [release, development].map((root) => allOf(root, name)[0]!);
      const [first, second] = told.map((element) => element.textContent || element.getAttribute("DefaultValue"));
      expect(first).not.toBe(second);
    }
  });
});

describe("the check of the element order", () => {
  const broken = (from: string, to: string): string[] => {
    const text = readFileSync(join(MANIFEST, "manifest.xml"), "utf8").replace(from, to);
    return faults(new DOMParser().parseFromString(text, "text/xml").documentElement!);
  };

  test.each([
    ["<Version>{{version}}</Version>", "", "TaskPaneApp must hold Version!"],
    ["<Permissions>", "<Colour /><Permissions>", "TaskPaneApp may not hold Colour"],
    ["<Id>{{id}}</Id>", "<Version>1.0</Version><Id>{{id}}</Id>", "Id too late in TaskPaneApp"],
  ])("sees that %s became %s", (from, to, fault) => {
    expect(broken(from, to)).toContain(fault);
  });
});
