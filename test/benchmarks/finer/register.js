// Loads the packages with another chord error: the one constant, nothing else.
import { register } from "node:module";

register(new URL("./loader.js", import.meta.url));
