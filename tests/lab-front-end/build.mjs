// Builds the page into the folder that is named: JupyterLab's notebook and the current widgets, one script and one style sheet.
import { build } from "esbuild";
import { copyFileSync } from "node:fs";
import { createRequire } from "node:module";

const out = process.argv[2];
const version = createRequire(import.meta.url)("@jupyterlab/notebook/package.json").version;
await build({
  entryPoints: ["index.js"], bundle: true, outfile: out + "/index.js", format: "iife", platform: "browser", minify: true, logLevel: "warning",
  define: { global: "window", "process.env.NODE_ENV": '"production"', "process.env": "{}", "process.cwd": "undefined", LAB_VERSION: JSON.stringify(version) },
  loader: { ".svg": "text", ".woff": "dataurl", ".woff2": "dataurl", ".ttf": "dataurl", ".eot": "dataurl", ".png": "dataurl", ".gif": "dataurl" },
  plugins: [{
    name: "package-styles",
    setup(b) {
      // Style sheets of packages name other packages with a tilde; pictures in them aren't needed here.
      b.onResolve({ filter: /^~/ }, a => b.resolve(a.path.slice(1), { resolveDir: a.resolveDir, kind: a.kind }));
      b.onResolve({ filter: /\.svg$/ }, a => a.kind === "url-token" ? { path: a.path, external: true } : undefined);
    },
  }],
});
copyFileSync("index.html", out + "/index.html");
