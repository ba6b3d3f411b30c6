// Types of chromium.js, for the tests.
export declare const CHROMIUM: string | undefined;
export declare const CHROMIUM_FLAGS: string[];
export declare const TO_GET_CHROMIUM: string;
