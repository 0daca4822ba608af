/**
 * Which children each element of the manifest may have, in order; "!" marks those that must be there, "*" those that
 * may stand more than once. Elements with an xsi:type are listed under it.
 * Source: OfficeAppManifestV1_1.xsd, OfficeAppBasicTypesV1_0.xsd and TaskPaneAppVersionOverridesV1_0.xsd as published
 * in OfficeDev/office-js-docs-pr, docs/overview/schemas/taskpane; Runtimes from [MS-OWEMXML] and the documentation of
 * the shared runtime, which puts it first in Host; ExtendedOverrides from the documentation of keyboard shortcuts,
 * which puts it below VersionOverrides. Later elements are left out.
 */
export const CHILDREN: Readonly<Record<string, readonly string[]>> = {
  TaskPaneApp: [
    "Id!",
    "AlternateId",
    "Version!",
    "ProviderName!",
    "DefaultLocale!",
    "DisplayName!",
    "Description!",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings!",
    "Permissions!",
    "Dictionary",
    "VersionOverrides",
    "ExtendedOverrides",
  ],
  "TaskPaneApp/Hosts": ["Host!*"],
  Requirements: ["Sets", "Methods"],
  Sets: ["Set!*"],
  DefaultSettings: ["SourceLocation!"],
  VersionOverridesV1_0: ["Description", "Requirements", "Hosts", "Resources"],
  "VersionOverridesV1_0/Hosts": ["Host!*"],
  Workbook: ["Runtimes", "AllFormFactors", "DesktopFormFactor", "TabletFormFactor", "PhoneFormFactor"],
  Runtimes: ["Runtime!*"],
  AllFormFactors: ["ExtensionPoint"],
  CustomFunctions: ["Script!", "Page!", "Metadata", "Namespace"],
  Script: ["SourceLocation!"],
  Page: ["SourceLocation!"],
  Metadata: ["SourceLocation!"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint!*"],
  GetStarted: ["Title!", "Description!", "LearnMoreUrl!"],
  PrimaryCommandSurface: ["OfficeTab*", "CustomTab*"],
  OfficeTab: ["Group!*"],
  Group: ["Label!", "Icon!", "Control!*"],
  Button: ["Label!", "Supertip!", "Icon!", "Action!"],
  Supertip: ["Title!", "Description!"],
  Icon: ["Image!*"],
  ShowTaskpane: ["TaskpaneId", "SourceLocation!", "Title"],
  Resources: ["Images", "Urls", "ShortStrings", "LongStrings"],
  Images: ["Image!*"],
  Urls: ["Url!*"],
  ShortStrings: ["String!*"],
  LongStrings: ["String!*"],
};

/** Longest texts. Source: as above, ShortString, LongString, URL, ReferenceId. */
export const LONGEST = { shortString: 125, longString: 250, url: 2048, id: 32 };

/** Icon sizes of the ribbon that Office takes; 16, 32 and 80 must be there. Source: as above, ImageResourceReference. */
export const ICON_SIZES = [16, 20, 24, 32, 40, 48, 64, 80];
