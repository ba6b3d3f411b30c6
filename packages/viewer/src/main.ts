// The page: puts the sheet together and passes what changes from hand to worker to drawing.
import { SheetController } from "./page/sheet-controller.ts";

new SheetController(document.body).begin();
