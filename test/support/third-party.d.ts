// Types of third-party.js, which runs without a build.
export interface OurPackage {
  readonly folder: string;
  readonly home: string;
  // biome-ignore lint/suspicious/noExplicitAny: package.json holds whatever it holds
  readonly manifest: any;
}
export interface ThirdParty {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
  readonly through: readonly string[];
}
export const ALLOWED: readonly string[];
export function ourPackages(): OurPackage[];
export function sourceOf(home: string): string;
export function runsWith(source: string, name: string): boolean;
export function thirdParties(ours?: readonly OurPackage[]): ThirdParty[];
export function thirdPartyText(): string;
export function pageThirdPartyText(): string;
