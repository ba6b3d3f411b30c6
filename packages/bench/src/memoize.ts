// What follows from an elevation is worked out once for it; checks, figures and sheets read the same result.
export { memoizeByPlane } from "@lamplane/parameters/elevation";
