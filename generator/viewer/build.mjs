// Bundles the script and the style into rodwright/page/, where the wheel has them.
import { build } from "esbuild";

await build({
  entryPoints: [
    { in: "src/main.tsx", out: "viewer" },
    { in: "src/style.css", out: "viewer" },
  ],
  outdir: "../rodwright/page",
  bundle: true,
  minify: true,
  format: "iife",
  target: ["es2022"],
  charset: "utf8",
  legalComments: "eof",
  jsx: "automatic",
  jsxImportSource: "preact",
});
