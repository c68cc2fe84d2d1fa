/**
 * The manifest of the Excel add-in: its rules, and its form for another address.
 * The published schemas do not compile as they stand, so the rules that Excel applies are written out here.
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import { DOMParser, onErrorStopParsing } from "@xmldom/xmldom";
import { root } from "./root.mjs";

const packaged = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8"));

export const localAddress = "https://localhost:8443";
export const manifestFile = path.join(root, "manifest.xml");
const id = "5f5dbb9c-3e71-4ef3-ba5f-0d4b67f44677";
const namespace = "BUSH";
const openingPane = "Office.AutoShowTaskpaneWithDocument";

/** Children that must be there, in the order in which Excel wants them. */
const required = {
  OfficeApp:
    "Id Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl AppDomains Hosts Requirements DefaultSettings Permissions VersionOverrides",
  DefaultSettings: "SourceLocation",
  VersionOverrides: "Hosts Resources",
  "VersionOverrides/Hosts/Host": "Runtimes AllFormFactors DesktopFormFactor",
  Runtimes: "Runtime",
  "AllFormFactors/ExtensionPoint": "Script Page Metadata Namespace",
  DesktopFormFactor: "GetStarted FunctionFile ExtensionPoint",
  GetStarted: "Title Description LearnMoreUrl",
  OfficeTab: "Group",
  Group: "Label Icon Control",
  Control: "Label Supertip Icon Action",
  Action: "TaskpaneId SourceLocation",
  Resources: "Images Urls ShortStrings LongStrings",
};
const requirementSets = { SharedRuntime: "1.1", CustomFunctionsRuntime: "1.3", ExcelApi: "1.12" };
const iconSizes = ["16", "32", "80"];
/** Longest text that Excel takes, by element. */
const longest = { "ShortStrings/String": 125, "LongStrings/String": 250, DisplayName: 125, Description: 250 };
const longestResid = 32;

/** Every fault of a manifest, in words; none where it is sound. */
export function manifestFaults(xml, version = packaged.version) {
  let document;
  try {
    document = new DOMParser({ onError: onErrorStopParsing }).parseFromString(xml, "text/xml");
  } catch (error) {
    return [`not well-formed: ${error.message.split("\n")[0]}`];
  }
  const elements = [...document.getElementsByTagName("*")];
  const at = (place) => elements.filter((element) => `/${placeOf(element)}`.endsWith(`/${place}`));
  return [
    ...childFaults(at),
    ...identityFaults(at, version),
    ...addressFaults(elements),
    ...resourceFaults(elements, at),
    ...runtimeFaults(at),
    ...textFaults(at),
  ];
}

function childFaults(at) {
  return Object.entries(required).flatMap(([place, names]) => {
    const parents = at(place);
    if (parents.length === 0) return [`${place} is missing`];
    return parents.flatMap((parent) => {
      const found = [...parent.childNodes].filter(isElement).map((child) => child.localName);
      const wanted = names.split(" ");
      const absent = wanted.filter((name) => !found.includes(name));
      if (absent.length > 0) return absent.map((name) => `${place}/${name} is missing`);
      const order = wanted.map((name) => found.indexOf(name));
      return order.some((n, i) => i > 0 && n < order[i - 1]) ? [`children of ${place} must stand as: ${names}`] : [];
    });
  });
}

function identityFaults(at, version) {
  const faults = [];
  const say = (wrong, text) => wrong && faults.push(text);
  const textOf = (place) => at(place)[0]?.textContent.trim();
  say(textOf("OfficeApp/Id") !== id, `Id must stay ${id}`);
  say(textOf("OfficeApp/Version") !== `${version}.0`, `Version must be ${version}.0, the package's version`);
  say(textOf("OfficeApp/Permissions") !== "ReadWriteDocument", "Permissions must be ReadWriteDocument");
  // by this name a workbook asks for the pane on opening
  say(textOf("Action/TaskpaneId") !== openingPane, `TaskpaneId must be ${openingPane}`);
  say(!at("OfficeApp/Hosts/Host").some((host) => host.getAttribute("Name") === "Workbook"), "Host Workbook is missing");
  const sets = at("Requirements/Sets/Set");
  for (const [name, least] of Object.entries(requirementSets)) {
    const set = sets.find((candidate) => candidate.getAttribute("Name") === name);
    say(set?.getAttribute("MinVersion") !== least, `Requirements must name ${name} ${least}`);
  }
  return faults;
}

/** Addresses: everything named Url, a source location or a domain of the add-in. */
function addressFaults(elements) {
  return elements.flatMap((element) => {
    const isAddress = /Url$|^Image$|^SourceLocation$|^AppDomain$/.test(element.localName);
    const address =
      element.getAttribute("DefaultValue") ?? (element.localName === "AppDomain" ? element.textContent : null);
    if (!isAddress || address === null) return [];
    return address.startsWith("https://") ? [] : [`${placeOf(element)}: ${address} must be https`];
  });
}

function resourceFaults(elements, at) {
  const defined = ["Images/Image", "Urls/Url", "ShortStrings/String", "LongStrings/String"]
    .flatMap((place) => at(`Resources/${place}`))
    .map((element) => element.getAttribute("id"));
  const used = elements.map((element) => element.getAttribute("resid")).filter((resid) => resid !== null);
  const unknown = used.filter((resid) => !defined.includes(resid));
  const idle = defined.filter((resid) => !used.includes(resid));
  const twice = defined.filter((resid, i) => defined.indexOf(resid) !== i);
  const long = [...used, ...defined].filter((resid) => resid.length > longestResid);
  const value = (resid) =>
    elements.find((element) => element.getAttribute("id") === resid)?.getAttribute("DefaultValue");
  const spaces = at("ExtensionPoint/Namespace").map((element) => value(element.getAttribute("resid")));
  return [
    ...only(unknown).map((resid) => `resid ${resid} is not defined under Resources`),
    ...idle.map((resid) => `resource ${resid} is not used`),
    ...only(twice).map((resid) => `resource ${resid} is defined twice`),
    ...only(long).map((resid) => `resid ${resid} is longer than ${longestResid} characters`),
    ...spaces.filter((name) => name !== namespace).map((name) => `Namespace must be ${namespace}, not ${name}`),
    ...at("Icon").flatMap((icon) => {
      const sizes = [...icon.childNodes].filter(isElement).map((image) => image.getAttribute("size"));
      return iconSizes.filter((size) => !sizes.includes(size)).map((size) => `${placeOf(icon)} lacks size ${size}`);
    }),
  ];
}

/** Functions and pane share one JavaScript context only where all four name the same page. */
function runtimeFaults(at) {
  const places = ["Runtimes/Runtime", "Page/SourceLocation", "DesktopFormFactor/FunctionFile", "Action/SourceLocation"];
  const [runtime, ...others] = places.map((place) => at(place)[0]?.getAttribute("resid"));
  const faults = places.slice(1).filter((_, i) => others[i] !== runtime);
  const lifetime = at("Runtimes/Runtime")[0]?.getAttribute("lifetime");
  return [
    ...faults.map((place) => `${place} must have the resid of Runtime, ${runtime}`),
    ...(lifetime === "long" ? [] : ["Runtime must have lifetime long"]),
  ];
}

function textFaults(at) {
  return Object.entries(longest).flatMap(([place, most]) =>
    at(place)
      .filter((element) => (element.getAttribute("DefaultValue") ?? "").length > most)
      .map((element) => `${element.getAttribute("id") ?? place} is longer than ${most} characters`),
  );
}

const isElement = (node) => node.nodeType === 1;
const only = (list) => [...new Set(list)];
const placeOf = (element) =>
  element.parentNode && isElement(element.parentNode)
    ? `${placeOf(element.parentNode)}/${element.localName}`
    : element.localName;

/** The manifest of an add-in that stands at another address; a domain is that of the address, without its folder. */
export function manifestAt(xml, address) {
  const base = checkedAddress(address);
  return xml
    .replaceAll(`<AppDomain>${localAddress}<`, () => `<AppDomain>${new URL(base).origin}<`)
    .replaceAll(localAddress, () => base);
}

/** An https address without a slash at its end; the add-in may stand in a folder of a host. */
export function checkedAddress(address) {
  const url = URL.canParse(address) ? new URL(address) : undefined;
  const hasMore = /[?#&<>"'\s]/.test(address) || url?.username || url?.password;
  if (url?.protocol !== "https:" || hasMore)
    throw new Error(`--base must be an https address such as https://example.org/bushcell, got ${address}`);
  return url.href.replace(/\/+$/, "");
}

/** The link for a person's or an organisation's e-mail or https address. */
export function contactAddress(contact) {
  const isMail = /^[^\s@"<>]+@[^\s@"<>]+\.[^\s@"<>]+$/.test(contact);
  const address = isMail ? `mailto:${contact}` : contact;
  if (!isMail && !(URL.canParse(contact) && /^https:\/\/[^\s"<>]+$/.test(contact)))
    throw new Error(`--contact must be an e-mail or https address, got ${contact}`);
  return address;
}
