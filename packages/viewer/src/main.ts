// The page: the drawing sheet, or the bench screens where the address asks for them.
import { openBench } from "./bench/open-bench.ts";
import { startOffline } from "./offline/offline.ts";
import { SheetController } from "./page/sheet-controller.ts";
import { isBenchAddress } from "./state/address.ts";

if (isBenchAddress(location.hash)) void openBench(document.body);
else {
  new SheetController(document.body).begin();
  void startOffline();
}
