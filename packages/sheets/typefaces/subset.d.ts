export declare const TYPEFACES: readonly string[];
export declare function subsetTypeface(name: string): Promise<Uint8Array>;
