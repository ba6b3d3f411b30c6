// Sources that rows of several tables name.

/** What workshops do and no book that we know says. */
export const COMMON_PRACTICE = "common practice, no published source";

/** Read on the iron in hand; no default stands for it. */
export const ON_IRON = "measured on the maker's own iron";

/** Read on the wood in hand. */
export const ON_BILLET = "measured on the maker's billet";

/** Whether a maker has to measure it on what he already owns. */
export const isOwnReading = ({ source }: { readonly source: string }): boolean =>
  source === ON_IRON || source === ON_BILLET;

export const PLANE_GEOMETRY = "plane geometry";

export const SHOP_SOURCE = "the maker's own shop";

const OWN_ASSUMPTION = "our assumption, no source";

/** Source of a default that is an assumption of ours, and what of the maker's tells better. */
export const ownAssumption = (better: string): string => `${OWN_ASSUMPTION}; ${better} better`;

/** Whether a parameter's default is an assumption of ours, which nothing outside bears out. */
export const isAssumption = ({ source }: { readonly source: string }): boolean => source.startsWith(OWN_ASSUMPTION);
