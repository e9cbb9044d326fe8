// Prints the Khronos validator's report on the glTF file named on the command line.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const require = createRequire(new URL("../../generator/viewer/", import.meta.url));
const report = await require("gltf-validator").validateBytes(
  new Uint8Array(readFileSync(process.argv[2])),
);
console.log(JSON.stringify(report));
