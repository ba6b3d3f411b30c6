// The page: the drawing sheet, or the bench screens or the class screen where the address asks for them.
import { openBench } from "./bench/open-bench.ts";
import { openClass } from "./class/open-class.ts";
import { startOffline } from "./offline/offline.ts";
import { SheetController } from "./page/sheet-controller.ts";
import { isBenchAddress, isClassAddress } from "./state/address.ts";
import { isServedClass } from "./state/served-class.ts";

if (isBenchAddress(location.hash)) void openBench(document.body);
else if (isClassAddress(location.hash) || (isServedClass() && location.hash === "")) void openClass(document.body);
else {
  new SheetController(document.body).begin();
  void startOffline();
}
