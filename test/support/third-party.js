// What comes with the packages when they are installed or built into a page: every dependency, to the last, with its licence.
import { existsSync, readdirSync, readFileSync, realpathSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const PACKAGES = fileURLToPath(new URL("../../packages/", import.meta.url));

/** Licences that allow use, change and sale, and ask no more than to be named. */
export const ALLOWED = ["MIT", "ISC", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Bitstream-Vera"];

/** Licences that a package.json does not name by its usual name, read off their text. */
const BY_TEXT = [
  ["Bitstream-Vera", /Bitstream Vera Fonts Copyright/],
  ["MIT", /^(?:The )?MIT License/i],
  ["MIT", /Permission is hereby granted, free of charge, to any person obtaining a copy\s+of this software/],
];

/** What a package holds a copy of, by its folder: of what else it is built with, nothing comes along. */
const COPIED = { sheets: ["dejavu-fonts-ttf"] };

const manifestIn = (home) => JSON.parse(readFileSync(join(home, "package.json"), "utf8"));

/** Packages of the workspace that others install. */
export const ourPackages = () =>
  readdirSync(PACKAGES)
    .map((folder) => ({ folder, home: join(PACKAGES, folder) }))
    .filter(({ home }) => existsSync(join(home, "package.json")))
    .map((each) => ({ ...each, manifest: manifestIn(each.home) }))
    .filter(({ manifest }) => !manifest.private);

/** Text of a package's sources. */
export const sourceOf = (home) =>
  readdirSync(join(home, "src"), { recursive: true })
    .filter((name) => /\.(ts|js)$/.test(name))
    .map((name) => readFileSync(join(home, "src", name), "utf8"))
    .join("\n");

/** Whether a source takes something out of a package, and not its types alone. */
export const runsWith = (source, name) =>
  new RegExp(`(?:from\\s+|import\\s+|import\\(\\s*|resolve\\(\\s*)["'\`]${name}(?:/[^"'\`]*)?["'\`]`).test(
    source.replace(/\b(?:import|export)\s+type\b[^;]*?from\s*["'][^"']+["']/g, ""),
  );

/** Every package from outside that is installed with some of ours, or built into them, by name; `through` is how it comes in. */
export function thirdParties(ours = ourPackages()) {
  const found = new Map();
  const visit = (name, from, through, optional = {}) => {
    const home = homeOf(name, from);
    if (home === undefined && name in optional) return;
    if (home === undefined) throw new Error(`${name}, which ${through.at(-1)} depends on, is not installed`);
    const { version, dependencies = {}, optionalDependencies = {} } = manifestIn(home);
    const key = `${name} ${version}`;
    if (found.has(key)) return;
    const chain = [...through, name];
    found.set(key, { name, version, through, ...licenceOf(home) });
    for (const each of Object.keys({ ...dependencies, ...optionalDependencies }))
      visit(each, home, chain, optionalDependencies);
  };
  for (const { home, folder, manifest } of ours) {
    const source = sourceOf(home);
    const built = Object.keys(manifest.devDependencies ?? {}).filter((name) => runsWith(source, name));
    for (const name of [...Object.keys(manifest.dependencies ?? {}), ...built, ...(COPIED[folder] ?? [])])
      if (!name.startsWith("@lamplane/")) visit(name, home, [folder]);
  }
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

function homeOf(name, from) {
  for (let folder = realpathSync(from); folder !== dirname(folder); folder = dirname(folder)) {
    const home = join(folder, "node_modules", name);
    if (existsSync(join(home, "package.json"))) return realpathSync(home);
  }
  return undefined;
}

/** Of several licences that are offered, the first that is allowed. */
const chosen = (license) => {
  const offered = typeof license === "string" && / OR /.test(license) ? license.replace(/[()]/g, "").split(" OR ") : [];
  return offered.find((name) => ALLOWED.includes(name)) ?? license;
};

function licenceOf(home) {
  const license = chosen(manifestIn(home).license);
  const files = readdirSync(home).filter((name) => /^(licen[cs]e|copying)/i.test(name));
  const file = files.find((name) => name.endsWith(`-${license}`)) ?? files[0];
  const text = file === undefined ? "" : readFileSync(join(home, file), "utf8").replace(/\r\n/g, "\n").trim();
  const byText = BY_TEXT.find(([, sign]) => sign.test(text))?.[0];
  return { licence: ALLOWED.includes(license) ? license : (byText ?? license ?? "unknown"), text };
}

/** THIRD-PARTY.md of the command: a table, then each licence's own words. */
export const thirdPartyText = () =>
  noticeText(
    "# What comes with lamplane",
    "Packages by others that are installed with lamplane's, or built into its page, with their licences. Written by `pnpm run docs`.\nWhat only builds or tests lamplane is not among them.",
    thirdParties(),
  );

/** THIRD-PARTY.md of the page: what its scripts and typefaces are built from, which is all but the command's own. */
export const pageThirdPartyText = () =>
  noticeText(
    "# What is built into the page",
    "Packages by others that lamplane's page is built from, with their licences. Written by `pnpm run docs`.",
    thirdParties(ourPackages().filter(({ folder }) => folder !== "cli")),
  );

function noticeText(title, introduction, all) {
  const rows = all.map(
    ({ name, version, licence, through }) => `| ${name} | ${version} | ${licence} | ${through.join(" → ")} |`,
  );
  return `${title}

${introduction}

| package | version | licence | comes in through |
| --- | --- | --- | --- |
${rows.join("\n")}

# Licences in their own words
${textsOnce(all).join("")}`;
}

/** Licence texts, those with the same words once, under the packages that have them. */
function textsOnce(all) {
  const under = new Map();
  for (const { name, text, licence } of all) {
    const words = text === "" ? `${licence}; the package holds no text of it.` : text;
    under.set(words, [...(under.get(words) ?? []), name]);
  }
  return [...under].map(([words, names]) => `\n## ${names.join(", ")}\n\n${indented(words)}\n`);
}

const indented = (words) =>
  words
    .split("\n")
    .map((line) => (line.trim() === "" ? "" : `    ${line.trimEnd()}`))
    .join("\n");
