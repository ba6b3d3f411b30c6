// Sources that rows of several sections name.

export const SHOP_SOURCE = "the maker's own shop";
