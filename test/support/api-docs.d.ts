// Types of api-docs.js, for the tests.
export declare function apiText(): string;
