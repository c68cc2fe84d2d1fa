import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import CopyPlugin from "copy-webpack-plugin";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import webpack from "webpack";
import { ListPackages } from "./scripts/licences/shipped.mjs";
import { checkedAddress, contactAddress, localAddress, manifestAt } from "./scripts/lib/manifest.mjs";

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

/** Of the sources a page shows the citations; what was read of them is for the docs and the tests. */
const citationsOf = (text) =>
  Object.fromEntries(Object.entries(JSON.parse(text)).map(([key, { citation }]) => [key, { citation }]));

const microsoft = "https://appsforoffice.microsoft.com";

/**
 * The Content-Security-Policy as the first thing in a page's head, so that it holds for everything behind it:
 * scripts come from the page's own address and, in Excel, Microsoft's; styles are also set by the components.
 */
class Policy {
  constructor(...scripts) {
    this.text = [
      "default-src 'none'",
      ["script-src 'self'", ...scripts].join(" "),
      "style-src 'self' 'unsafe-inline'",
      "img-src 'self' data: blob:",
      "font-src 'self' data:",
      "connect-src 'self'",
      "base-uri 'none'",
      "form-action 'none'",
    ].join("; ");
  }
  apply(compiler) {
    compiler.hooks.compilation.tap("Policy", (compilation) =>
      HtmlWebpackPlugin.getHooks(compilation).beforeEmit.tap("Policy", (page) => ({
        ...page,
        html: page.html.replace("<head>", `<head><meta http-equiv="Content-Security-Policy" content="${this.text}">`),
      })),
    );
  }
}

/** @type {(env: { base?: string, office?: string, contact?: string }, argv: { mode?: string }) => import("webpack").Configuration[]} */
export default ({ base = localAddress, office, contact }, { mode = "production" }) => {
  const common = {
    mode,
    devtool: false,
    output: { path: path.join(root, "dist"), filename: "[name].js", chunkFilename: "[name].chunk.js" },
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: {
      rules: [
        { test: /\.tsx?$/, loader: path.join(root, "scripts/lib/esbuildLoader.mjs") },
        { test: /sources\.json$/, parser: { parse: citationsOf } },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
    // a sixth of the default minimizer's time on the local sheet's engine, for a few per cent more bytes
    optimization: { minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.esbuildMinify, parallel: false })] },
    performance: { hints: false },
    stats: "errors-warnings",
  };
  return [
    {
      ...common,
      name: "functions",
      entry: { functions: path.join(root, "src/functions/index.ts") },
      // read whole before the first cell answers: worth the default minimizer's time
      optimization: { minimizer: [new MinimizerPlugin()] },
      module: {
        rules: [
          { test: /src.core.*\.ts$/, enforce: "post", loader: path.join(root, "scripts/lib/withoutDocs.mjs") },
          { test: /mathjs.lib.esm.type.unit.Unit\.js$/, loader: path.join(root, "scripts/lib/withoutUncalled.mjs") },
          {
            test: /grades.generic\.json$/,
            type: "javascript/auto",
            loader: path.join(root, "scripts/lib/byColumn.mjs"),
          },
          ...common.module.rules,
        ],
      },
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
    },
    // the template loads htmlWebpackPlugin.options.office, then functions.js: both run in the pane's context
    {
      ...common,
      name: "taskpane",
      entry: { taskpane: path.join(root, "src/taskpane/main.tsx") },
      // on the local sheet's page as well, beside the workbench's own chunks
      output: {
        ...common.output,
        chunkFilename: "taskpane-[name].chunk.js",
        uniqueName: "bushcell-pane",
        library: { name: "BushcellPane", type: "window" },
      },
      plugins: [
        new ListPackages("packages-in-taskpane.json"),
        new MiniCssExtractPlugin({ filename: "[name].css" }),
        new HtmlWebpackPlugin({
          filename: "taskpane.html",
          template: path.join(root, "src/taskpane/taskpane.html"),
          scriptLoading: "defer",
          office: office ? "office/office.js" : `${microsoft}/lib/1/hosted/office.js`,
        }),
        office ? new Policy() : new Policy(microsoft),
      ],
    },
    {
      ...common,
      name: "workbench",
      entry: { workbench: path.join(root, "src/workbench/main.ts") },
      // kept by browsers for ever, which megabytes are worth
      output: { ...common.output, chunkFilename: "[name].[contenthash:12].chunk.js" },
      plugins: [
        new webpack.NormalModuleReplacementPlugin(/^\.\/[a-z-]+(-\d{4})?-[\w-]{8}\.js$/, (wanted) => {
          if (wanted.context.includes("engine-render"))
            wanted.request = path.join(root, "src/workbench/grid/noPattern.ts");
        }),
        new ListPackages("packages-in-workbench.json"),
        new MiniCssExtractPlugin({ filename: "[name].css", chunkFilename: "[name].[contenthash:12].css" }),
        new HtmlWebpackPlugin({
          filename: "index.html",
          template: path.join(root, "src/workbench/index.html"),
          scriptLoading: "defer",
        }),
        new Policy(),
      ],
    },
  ];
};
