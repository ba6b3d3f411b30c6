// Sources that rows of several sections name.

export const SHOP_SOURCE = "the maker's own shop";

const OWN_ASSUMPTION = "our assumption, no source";

/** Source of a default that is an assumption of ours, and what of the maker's tells better. */
export const ownAssumption = (better: string): string => `${OWN_ASSUMPTION}; ${better} better`;

/** Whether a parameter's default is an assumption of ours, which nothing outside bears out. */
export const isAssumption = ({ source }: { readonly source: string }): boolean => source.startsWith(OWN_ASSUMPTION);
