// Parts of libraries that neither the page nor the command uses, left out of what is joined of them.

/** The PDF library reads compressed typefaces too; the two within are not compressed, and this decoder is as large as one of them. */
export const noWoff2 = {
  name: "no-woff2",
  enforce: /** @type {const} */ ("pre"),
  load: (/** @type {string} */ id) =>
    /[\\/]brotli[\\/]decompress\.js$/.test(id) ? "export default undefined;" : undefined,
};

/** Of the solids' library only what parts are given as, measured and written by: nothing here makes primitives, hulls or booleans. */
export const solidsOnly = {
  name: "solids-only",
  enforce: /** @type {const} */ ("pre"),
  load: (/** @type {string} */ id) =>
    /[\\/]@jscad[\\/]modeling[\\/]src[\\/]index\.js$/.test(id)
      ? `module.exports = { ${["geometries", "maths", "measurements", "operations/modifiers", "text", "utils"]
          .map((part) => `${part.split("/").at(-1)}: require("./${part}")`)
          .join(", ")} };`
      : undefined,
};
