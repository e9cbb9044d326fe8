// Bundles the script and the style into rodwright/page/ (or another folder), where the wheel has them.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

const folder = process.argv[2] ?? "../rodwright/page";
const made = await build({
  entryPoints: [
    { in: "src/main.tsx", out: "viewer" },
    { in: "src/style.css", out: "viewer" },
  ],
  outdir: folder,
  bundle: true,
  minify: true,
  format: "iife",
  target: ["es2022"],
  charset: "utf8",
  legalComments: "none",
  jsx: "automatic",
  jsxImportSource: "preact",
  write: false,
});
const digest = `/* Rodwright's viewer, from sources of SHA-256 ${sources()} */\n`;
for (const file of made.outputFiles) {
  const notice = file.path.endsWith(".js") ? licences() : "";
  writeFileSync(join(folder, file.path.split(/[\\/]/).at(-1)), digest + notice + file.text);
}

// What the bundle is made of: names and contents, each ended by a zero byte; the same is reckoned in
// tests/page/test_bundle.py.
function sources() {
  const found = readdirSync("src", { recursive: true })
    .filter((name) => /\.(tsx?|css)$/.test(name))
    .map((name) => `src/${name.replaceAll("\\", "/")}`);
  const hash = createHash("sha256");
  for (const name of [...found, "build.mjs", "package-lock.json"].sort())
    hash.update(`${name}\0`).update(readFileSync(name)).update("\0");
  return hash.digest("hex");
}

// The terms of what is bundled, which have to go wherever it goes.
function licences() {
  const { packages } = JSON.parse(readFileSync("package-lock.json", "utf8"));
  const bundled = Object.entries(packages).filter(([place, { dev }]) => place && !dev);
  const texts = bundled.map(([place, { version }]) => {
    const name = place.replace("node_modules/", "");
    return `${name} ${version}\n\n${readFileSync(join(place, "LICENSE"), "utf8").trim()}\n`;
  });
  return `/*\nIt holds:\n\n${texts.join("\n\n")}*/\n`;
}
