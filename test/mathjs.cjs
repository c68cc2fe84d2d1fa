/**
 * mathjs for jest, by its own files: the main entry makes hundreds of functions that nothing here calls, a second for each
 * test file. Bundles leave them out by themselves.
 */
// oxlint-disable-next-line typescript/no-require-imports -- each only where it is asked for
const from = (file) => require(`../node_modules/mathjs/lib/cjs/${file}.js`);

module.exports = {
  create: from("core/create").create,
  get all() {
    return from("entry/allFactoriesAny").all;
  },
};
