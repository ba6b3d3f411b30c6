// Whether `lamplane view` serves this page: then its address holds a secret and leads nowhere from another machine.
export const isServedByView = (): boolean => document.querySelector('meta[name="lamplane-view"]') !== null;
