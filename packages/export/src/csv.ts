// Tables as comma-separated values. @see RFC 4180, Common Format and MIME Type for Comma-Separated Values

const LINE_END = "\r\n";

/** One line of a table; a cell with a comma, a quote or a line end in it stands in quotes. */
export const csvLine = (cells: readonly string[]): string => cells.map(cell).join(",") + LINE_END;

const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
