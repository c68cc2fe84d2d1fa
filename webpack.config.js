import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import webpack from "webpack";

const root = import.meta.dirname;
const wrappers = readdirSync(path.join(root, "src/functions"))
  .map((name) => path.join(root, "src/functions", name))
  .filter((file) => readFileSync(file, "utf8").includes("@customfunction"));

/** The generator has no tag for it: without this flag a cell error would never reach a function. */
class PassCellErrors {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("PassCellErrors", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: "PassCellErrors", stage }, (assets) => {
        const metadata = JSON.parse(assets["functions.json"].source().toString());
        const text = JSON.stringify({ allowErrorForDataTypeAny: true, ...metadata }, null, 1);
        compilation.updateAsset("functions.json", new webpack.sources.RawSource(text));
      });
    });
  }
}

/** @type {(env: unknown, argv: { mode?: string }) => import("webpack").Configuration[]} */
export default (_env, { mode = "production" }) => {
  const common = {
    mode,
    devtool: false,
    output: { path: path.join(root, "dist"), filename: "[name].js", chunkFilename: "[name].chunk.js" },
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: {
      rules: [
        { test: /\.tsx?$/, loader: "ts-loader", options: { transpileOnly: true } },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
    performance: { hints: false },
    stats: "errors-warnings",
  };
  return [
    {
      ...common,
      name: "functions",
      entry: { functions: wrappers },
      plugins: [new CustomFunctionsMetadataPlugin({ output: "functions.json", input: wrappers }), new PassCellErrors()],
    },
    {
      ...common,
      name: "workbench",
      entry: { workbench: path.join(root, "src/workbench/main.ts") },
      plugins: [
        new MiniCssExtractPlugin({ filename: "[name].css" }),
        new HtmlWebpackPlugin({ filename: "index.html", template: path.join(root, "src/workbench/index.html"), scriptLoading: "defer" }),
      ],
    },
  ];
};
