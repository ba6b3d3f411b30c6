// The plane that a page opens on, computed by the page's own sources: text that the build puts into the page.

/**
 * @param build vite's
 * @param root folder of this package
 */
export async function openingPlaneJson(build, root) {
  const { output } = await build({
    root,
    configFile: `${root}vite.config.ts`,
    logLevel: "warn",
    build: { write: false, copyPublicDir: false, lib: { entry: "src/worker/opening-plane.ts", formats: ["es"] } },
  }).then((made) => (Array.isArray(made) ? made[0] : made));
  const [{ code }] = output;
  const { openingPlane } = await import(`data:text/javascript;base64,${Buffer.from(code).toString("base64")}`);
  return JSON.stringify(openingPlane());
}
