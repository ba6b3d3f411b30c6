// The design as it is drawn goes on elsewhere: shared by address and card, followed at the bench, cut by a router.
import { openRouterPath } from "../router/router-source.ts";
import { share } from "../share/share-source.ts";
import { ownPage } from "../share/shared-page.ts";
import { formatBenchAddress } from "../state/address.ts";
import type { DesignQuery, Engine } from "../state/engine.ts";
import type { DesignLoader } from "./design-loader.ts";
import type { DrawingView } from "./drawing-view.ts";
import type { SheetParts } from "./sheet-parts.ts";

export interface SharingContext {
  readonly engine: Engine;
  readonly parts: SheetParts;
  readonly drawing: DrawingView;
  readonly loader: DesignLoader;
  query(): DesignQuery;
}

/** Room for the body's picture on the card, px. */
const PICTURE = { width: 920, height: 760 };

export async function shareDrawn({ engine, parts, drawing, loader, query }: SharingContext): Promise<void> {
  const { plane } = drawing;
  if (!plane) return;
  try {
    const asked = query();
    const [text, shortText] = await Promise.all([engine.text(asked, "carried"), engine.text(asked, "short")]);
    await share({
      plane,
      file: loader.fileName,
      stage: asked.stage,
      text,
      shortText,
      page: ownPage(),
      body: parts.body.picture(PICTURE.width, PICTURE.height),
    });
  } catch (error) {
    parts.title.say((error as Error).message);
  }
}

/** Over the page, the path of a router's cutter. */
export async function showRouterPath({ engine, parts, query }: SharingContext): Promise<void> {
  try {
    await openRouterPath(await engine.text(query(), "carried"));
  } catch (error) {
    parts.title.say((error as Error).message);
  }
}

/** The page begins anew with the bench's screens. */
export async function goToBench({ engine, parts, loader, query }: SharingContext): Promise<void> {
  try {
    location.hash = formatBenchAddress({ name: loader.fileName, text: await engine.text(query(), "carried") });
  } catch (error) {
    parts.title.say((error as Error).message);
  }
}
