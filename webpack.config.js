import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import CopyPlugin from "copy-webpack-plugin";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import webpack from "webpack";
import { ListPackages } from "./scripts/licences/shipped.mjs";
import { checkedAddress, contactAddress, localAddress, manifestAt } from "./scripts/lib/manifest.mjs";
import { citationsOf } from "./scripts/lib/citations.mjs";
import { withPolicy } from "./scripts/lib/policy.mjs";

const root = import.meta.dirname;
const wrappers = readdirSync(path.join(root, "src/functions"))
  .map((name) => path.join(root, "src/functions", name))
  .filter((file) => readFileSync(file, "utf8").includes("@customfunction"));

/**
 * What the generator has no tag for: the flag without which a cell error would never reach a function,
 * and each function's page at the address where the add-in stands.
 */
class CompleteMetadata {
  constructor(base) {
    this.base = base;
  }
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("CompleteMetadata", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: "CompleteMetadata", stage }, (assets) => {
        const metadata = JSON.parse(assets["functions.json"].source().toString());
        const functions = metadata.functions.map((f) => ({
          ...f,
          helpUrl: `${this.base}/docs/functions/${f.id.toLowerCase()}.html`,
        }));
        const text = JSON.stringify({ allowErrorForDataTypeAny: true, ...metadata, functions }, null, 1);
        compilation.updateAsset("functions.json", new webpack.sources.RawSource(text));
      });
    });
  }
}

class Policy {
  apply(compiler) {
    compiler.hooks.compilation.tap("Policy", (compilation) =>
      HtmlWebpackPlugin.getHooks(compilation).beforeEmit.tap("Policy", (page) => ({
        ...page,
        html: withPolicy(page.html),
      })),
    );
  }
}

/**
 * functions.js with its metadata and what stands beside it; the pages that are applications are scripts/build/pages.mjs's.
 * @type {(env: { base?: string, contact?: string }, argv: { mode?: string }) => import("webpack").Configuration}
 */
export default ({ base = localAddress, contact }, { mode = "production" }) => ({
  mode,
  devtool: false,
  entry: { functions: path.join(root, "src/functions/index.ts") },
  output: { path: path.join(root, "dist"), filename: "[name].js" },
  resolve: { extensions: [".ts", ".js"] },
  module: {
    rules: [
      { test: /src.core.*\.ts$/, enforce: "post", loader: path.join(root, "scripts/lib/withoutDocs.mjs") },
      { test: /mathjs.lib.esm.type.unit.Unit\.js$/, loader: path.join(root, "scripts/lib/withoutUncalled.mjs") },
      {
        test: /grades.generic\.json$/,
        type: "javascript/auto",
        loader: path.join(root, "scripts/lib/byColumn.mjs"),
      },
      { test: /\.ts$/, loader: path.join(root, "scripts/lib/esbuildLoader.mjs") },
      { test: /sources\.json$/, parser: { parse: citationsOf } },
    ],
  },
  // read whole before the first cell answers: worth the default minimizer's time
  optimization: { minimizer: [new MinimizerPlugin()] },
  performance: { hints: false },
  stats: "errors-warnings",
  plugins: [
    new CustomFunctionsMetadataPlugin({ output: "functions.json", input: wrappers }),
    new CompleteMetadata(checkedAddress(base)),
    new ListPackages("packages-in-functions.json"),
    new CopyPlugin({
      patterns: [
        { from: "manifest.xml", transform: (xml) => manifestAt(xml.toString(), base) },
        { from: "assets/*.png" },
        { from: "LICENSE", to: "licence.txt", toType: "file" },
      ],
    }),
    new HtmlWebpackPlugin({
      filename: "help.html",
      template: "src/help/help.html",
      chunks: [],
      contact,
      contactAddress: contact && contactAddress(contact),
    }),
    new Policy(),
  ],
});
