// The page: puts the sheet together and passes what changes from hand to worker to drawing.
import { Sheet } from "./page/sheet.ts";

new Sheet(document.body).begin();
