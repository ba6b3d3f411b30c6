// Tables as comma-separated values. @see RFC 4180, Common Format and MIME Type for Comma-Separated Values

const LINE_END = "\r\n";

/** One line of a table; a cell with a comma, a quote or a line end in it stands in quotes. */
export const csvLine = (cells: readonly string[]): string => cells.map(csvCell).join(",") + LINE_END;

/** A cell that begins like a formula, also in wide signs, and is no number is marked as text: a spreadsheet would run it. */
function csvCell(text: string): string {
  const plain = /^[=+@\t\r\n＝＋－＠-]/.test(text) && Number.isNaN(Number(text)) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
