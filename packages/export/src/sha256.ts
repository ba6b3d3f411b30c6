// The one way to a SHA-256 here, which a page has as well as a command.
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";

/** SHA-256 of bytes, in lower-case hexadecimal. @see NIST FIPS 180-4 */
export const sha256Hex = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));
