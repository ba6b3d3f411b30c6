export function writeServiceWorker(dist: string, source: string): void;
